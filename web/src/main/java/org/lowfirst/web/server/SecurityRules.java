package org.lowfirst.web.server;

import java.time.Duration;
import org.lowfirst.web.view.Trouble;
import org.lowfirst.web.view.TroublePages;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * Who is answered and what a browser may do with a page. No sign-in is asked on the loopback address.
 *
 * <p>The token against forged forms lives in a cookie, not in a session, so that a form left open over a restart or a
 * night can still be sent and nothing typed is lost.
 */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
public class SecurityRules {

    private static final String CONTENT_POLICY = "default-src 'self'; script-src 'self'; style-src 'self'; "
            + "img-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    private static final Duration TOKEN_LIFE = Duration.ofDays(365);

    @Bean
    SecurityFilterChain filterChain(HttpSecurity http, TroublePages troublePages) {
        return http.authorizeHttpRequests(any -> any.anyRequest().permitAll())
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(csrf -> csrf.csrfTokenRepository(tokenInCookie()))
                .headers(SecurityRules::headers)
                .addFilterAfter(new LoopbackFilter(troublePages), HeaderWriterFilter.class)
                .exceptionHandling(refused -> refused.accessDeniedHandler(
                        (request, response, reason) -> troublePages.write(Trouble.STALE_FORM, request, response)))
                .requestCache(AbstractHttpConfigurer::disable)
                .formLogin(AbstractHttpConfigurer::disable)
                .httpBasic(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .build();
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .contentTypeOptions(Customizer.withDefaults())
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .frameOptions(HeadersConfigurer.FrameOptionsConfig::deny)
                .httpStrictTransportSecurity(HeadersConfigurer.HstsConfig::disable)
                .xssProtection(HeadersConfigurer.XXssConfig::disable)
                .permissionsPolicyHeader(policy -> policy.policy("geolocation=(), microphone=(), camera=()"));
    }

    private static CsrfTokenRepository tokenInCookie() {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName("lowfirst-form");
        tokens.setCookieCustomizer(
                cookie -> cookie.httpOnly(true).sameSite("Strict").path("/").maxAge(TOKEN_LIFE));
        return tokens;
    }
}

package org.lowfirst.web.server;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.apache.catalina.core.StandardHost;
import org.lowfirst.web.view.Assets;
import org.lowfirst.web.view.Screens;
import org.lowfirst.web.view.TroublePages;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.EnableWebMvc;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** How requests find their page or file. */
@Configuration(proxyBeanMethods = false)
@EnableWebMvc
public class PageRouting implements WebMvcConfigurer {

    private static final CacheControl A_YEAR =
            CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable();

    private final Screens screens;

    public PageRouting(Screens screens) {
        this.screens = screens;
    }

    @Bean
    TroublePages troublePages() {
        return new TroublePages(screens);
    }

    /** Browsers send forms in the encoding of the page, and do not say so. */
    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> formsInUtf8() {
        return factory -> factory.addContextCustomizers(
                context -> context.setRequestCharacterEncoding(StandardCharsets.UTF_8.name()));
    }

    /** What Tomcat refuses by itself is told in our words. */
    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> plainErrors() {
        return factory -> factory.addContextCustomizers(
                context -> ((StandardHost) context.getParent()).setErrorReportValveClass(PlainErrors.class.getName()));
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new RequestedLanguage());
    }

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        registry.addResourceHandler(screens.assets().folder() + "**")
                .addResourceLocations("classpath:/static/", "classpath:/META-INF/resources/" + Assets.HTMX_FOLDER)
                .setCacheControl(A_YEAR);
    }
}

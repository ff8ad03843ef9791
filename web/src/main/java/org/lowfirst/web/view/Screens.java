package org.lowfirst.web.view;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import jakarta.servlet.http.HttpServletRequest;
import org.lowfirst.web.view.Frame.FormToken;
import org.lowfirst.web.words.Spoken;
import org.lowfirst.web.words.Words;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.servlet.View;

/** Makes views of page records. Thread-safe. */
public final class Screens {

    private static final int OK = 200;
    private static final int REFUSED = 422;

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Screens.class.getClassLoader(), "org.lowfirst.web.jte");
    private final Assets assets = Assets.onClassPath();

    /** The words of the screens, in the language of the request being answered. */
    public Words words() {
        return Spoken.words();
    }

    /** Where stylesheet, scripts and fonts are. */
    public Assets assets() {
        return assets;
    }

    /** Shows a page. */
    public View show(Page page) {
        return new Screen(this, page, OK);
    }

    /** Shows a page again because something typed into it was refused. */
    public View refused(Page page) {
        return new Screen(this, page, REFUSED);
    }

    /** Shows a page about trouble. */
    public View trouble(Trouble trouble) {
        return trouble(trouble, "");
    }

    /** Shows a page about trouble that has words of its own. */
    public View trouble(Trouble trouble, String told) {
        return new Screen(this, new TroublePage(trouble, told), trouble.status());
    }

    TemplateEngine templates() {
        return templates;
    }

    Frame frame(Page page, HttpServletRequest request) {
        Words words = words();
        return new Frame(
                words,
                page.at(),
                Person.remembered(request),
                page.title(words),
                page.section(),
                page.focused(),
                tokenOf(request),
                assets,
                noticeOf(request));
    }

    private String noticeOf(HttpServletRequest request) {
        String saved = request.getParameter("saved");
        return saved != null && saved.matches("[0-9]{1,12}") ? words().of("notice.saved", saved) : "";
    }

    private static FormToken tokenOf(HttpServletRequest request) {
        return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token
                ? new FormToken(token.getParameterName(), token.getToken())
                : FormToken.NONE;
    }
}

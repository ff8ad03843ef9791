package org.lowfirst.web.view;

import org.lowfirst.web.words.Words;

/** Says what is wrong with a request and what to do. */
public record TroublePage(Trouble trouble) implements Page {

    @Override
    public String template() {
        return "trouble";
    }

    @Override
    public String title(Words words) {
        return words.of(trouble.key() + ".title");
    }

    @Override
    public Section section() {
        return Section.BANK;
    }

    public String what(Words words) {
        return words.of(trouble.key() + ".what");
    }

    public String todo(Words words) {
        return words.of(trouble.key() + ".todo");
    }
}

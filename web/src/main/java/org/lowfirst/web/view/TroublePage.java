package org.lowfirst.web.view;

import org.lowfirst.web.words.Words;

/**
 * Says what is wrong with a request and what to do.
 *
 * @param trouble what kind it is
 * @param told what is wrong in this case; empty for the words of the kind
 */
public record TroublePage(Trouble trouble, String told) implements Page {

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
        return told.isEmpty() ? words.of(trouble.key() + ".what") : told;
    }

    public String todo(Words words) {
        return words.of(trouble.key() + ".todo");
    }
}

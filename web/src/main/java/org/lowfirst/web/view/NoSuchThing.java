package org.lowfirst.web.view;

/** Thrown by a page whose address names something the bench does not have; answered with 404. */
public final class NoSuchThing extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NoSuchThing(String name) {
        super("The bench has no " + name + ".");
    }
}

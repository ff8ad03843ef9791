package org.lowfirst.app.bench;

/** Removes the demo bench with its whole journal, in one step. No other bench can be removed. */
public interface RemovingTheDemo {

    /** @return whether there was one */
    boolean remove();
}

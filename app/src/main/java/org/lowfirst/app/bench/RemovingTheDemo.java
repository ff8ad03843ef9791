package org.lowfirst.app.bench;

/** Removes the demo bench with its whole journal, in one step. No other bench can be removed. */
public final class RemovingTheDemo {

    private final Recorder recorder;

    RemovingTheDemo(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * @return whether there was one
     * @throws org.lowfirst.app.journal.JournalUnavailable when the database fails; then it is still there
     */
    public boolean remove() {
        return recorder.journal().removeDemo(LoadingTheDemoBench.DEMO);
    }
}

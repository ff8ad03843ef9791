package org.lowfirst.app.crash;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;

/**
 * Records fills until it is killed. Prints "sent KEY" before it sends a fill and "kept KEY SEQ" when the journal has acknowledged
 * it. Arguments: database, number of this child, key to send again ("-" for none), most fills.
 */
public final class CrashChild {

    private final Benches benches;
    private final PrintStream out;

    private CrashChild(Benches benches, PrintStream out) {
        this.benches = benches;
        this.out = out;
    }

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        if (!(Journal.open(Path.of(arguments[0])) instanceof Opening.Opened opened)) {
            throw new IllegalStateException("The database does not open.");
        }
        IdealGas gas = new IdealGas("oxygen", 0.032);
        try (Benches benches = new Benches(opened.journal(), Clock.systemUTC(), gas, Locale.ENGLISH)) {
            new CrashChild(benches, out).run(arguments[1], arguments[2], Integer.parseInt(arguments[3]));
        }
    }

    private void run(String child, String again, int mostFills) {
        out.println("ready");
        if (!again.equals("-")) {
            send(again);
        }
        for (int i = 1; i <= mostFills; i++) {
            send("child-" + child + "-" + i);
        }
    }

    private void send(String key) {
        out.println("sent " + key);
        Recording recording = benches.guidingAFill()
                .recordFill(
                        CrashWorld.BENCH,
                        new RecordFill(
                                new FillId(key),
                                CrashWorld.BOTTLE,
                                null,
                                reads("40"),
                                reads("150"),
                                List.of(
                                        new Stage(CrashWorld.A, reads("60"), null, reads("60")),
                                        new Stage(CrashWorld.B, reads("150"), null, reads("190")))),
                        Submission.now(new EntryKey(key), "Ida"));
        if (!(recording instanceof Recording.Recorded recorded)) {
            throw new IllegalStateException("not recorded: " + recording);
        }
        out.println("kept " + key + " " + recorded.entries().get(0).seq());
    }

    private static Reading reads(String bar) {
        return new Reading(
                StatedPressure.of(bar, PressureUnit.BAR),
                CrashWorld.OPENED,
                StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                false,
                null);
    }
}

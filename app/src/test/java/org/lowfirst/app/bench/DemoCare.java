package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;

/** The part of the demo's story about equipment that is looked after and bottles kept ready for wave flights. */
final class DemoCare {

    private static final String WAVE = "Wave flights";

    private final Benches benches;
    private final BenchId bench;
    private int keys;

    DemoCare(Benches benches, BenchId bench) {
        this.benches = benches;
        this.bench = bench;
    }

    /** @param out bottles on the gliders; {@code shelf} is their spare */
    void tell(BottleId shelf, BottleId... out) {
        lookAfterEquipment();
        keepReady(shelf, out);
        callForHelp();
    }

    /** 112 is the emergency number of the European Union (directive (EU) 2018/1972, article 109). */
    private void callForHelp() {
        done(benches.keepingLocalHelp()
                .set(
                        bench,
                        new LocalHelp(
                                "Quillmere airfield, hangar 2, gate from the lane by the windsock",
                                "The windsock",
                                List.of(
                                        new LocalHelp.Contact("Fire and ambulance", "112"),
                                        new LocalHelp.Contact("Wren, answers for the bench", "extension 21"))),
                        submission()));
    }

    private void lookAfterEquipment() {
        look(new Upkeep(DueKind.HOSE, "Fill hose", LocalDate.of(2021, 7, 10), 60, "maker's instructions"));
        look(new Upkeep(DueKind.GAUGE, "Panel gauge", LocalDate.of(2026, 5, 4), 24, "own practice"));
        look(new Upkeep(DueKind.RELIEF_VALVE, "Relief valve", LocalDate.of(2025, 1, 20), 60, "maker's instructions"));
    }

    private void keepReady(BottleId shelf, BottleId... out) {
        done(benches.keepingReady()
                .describe(bench, new GroupDetails(WAVE, 1, DemoPen.bar(100), DemoPen.bar(150)), submission()));
        for (BottleId bottle : out) {
            done(benches.keepingReady().assign(bench, bottle, WAVE, Place.IN_SERVICE, submission()));
        }
        done(benches.keepingReady().assign(bench, shelf, WAVE, Place.SPARE, submission()));
    }

    private void look(Upkeep upkeep) {
        done(benches.keepingEquipment().describe(bench, upkeep, submission()));
    }

    private Submission submission() {
        keys++;
        return Submission.now(new EntryKey("care-" + keys), "Wren");
    }

    private static void done(Recording recording) {
        if (!(recording instanceof Recording.Recorded)) {
            throw new AssertionError(recording);
        }
    }
}

package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.LocalHelp;

/** Equipment, groups of bottles, local numbers: how each kind of fact is written. */
final class CareCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "upkeep.ended",
                    1,
                    CareFact.UpkeepEnded.class,
                    f -> new Payload().with("equipment", f.equipment()).with("reason", f.reason()),
                    p -> new CareFact.UpkeepEnded(p.text("equipment"), p.text("reason"))),
            new FactCodec<>(
                    "emergency-card.set",
                    1,
                    CareFact.EmergencyCardSet.class,
                    f -> write(f.help()),
                    p -> new CareFact.EmergencyCardSet(help(p))));

    private CareCodecs() {}

    private static Payload write(LocalHelp help) {
        return new Payload()
                .with("place", help.place())
                .with("meetingPoint", help.meetingPoint())
                .withAll(
                        "numbers",
                        help.numbers().stream()
                                .map(one -> new Payload().with("who", one.who()).with("dial", one.dial()))
                                .toList());
    }

    private static LocalHelp help(Payload p) {
        return new LocalHelp(
                p.text("place"),
                p.text("meetingPoint"),
                p.parts("numbers", one -> new LocalHelp.Contact(one.text("who"), one.text("dial"))));
    }
}

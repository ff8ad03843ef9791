package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.readiness.Place;

/** Equipment, groups of bottles, local numbers: how each kind of fact is written. */
final class CareCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "upkeep.described",
                    1,
                    CareFact.UpkeepDescribed.class,
                    f -> SquadParts.write(f.upkeep()),
                    p -> new CareFact.UpkeepDescribed(SquadParts.upkeep(p))),
            new FactCodec<>(
                    "upkeep.done",
                    1,
                    CareFact.UpkeepDone.class,
                    f -> new Payload()
                            .with("equipment", f.equipment())
                            .with("day", f.day().toString()),
                    p -> new CareFact.UpkeepDone(p.text("equipment"), Parts.day(p.text("day")))),
            new FactCodec<>(
                    "upkeep.ended",
                    1,
                    CareFact.UpkeepEnded.class,
                    f -> new Payload().with("equipment", f.equipment()).with("reason", f.reason()),
                    p -> new CareFact.UpkeepEnded(p.text("equipment"), p.text("reason"))),
            new FactCodec<>(
                    "group.described",
                    1,
                    CareFact.GroupDescribed.class,
                    f -> SquadParts.write(f.group()),
                    p -> new CareFact.GroupDescribed(SquadParts.group(p))),
            new FactCodec<>(
                    "group.ended",
                    1,
                    CareFact.GroupEnded.class,
                    f -> new Payload().with("group", f.group()),
                    p -> new CareFact.GroupEnded(p.text("group"))),
            new FactCodec<>(
                    "bottle.assigned",
                    1,
                    CareFact.BottleAssigned.class,
                    f -> new Payload()
                            .with("bottle", f.bottle().value())
                            .with("group", f.group())
                            .with("place", Parts.lower(f.place())),
                    p -> new CareFact.BottleAssigned(
                            new BottleId(p.text("bottle")),
                            p.textOrNull("group"),
                            Parts.choice(Place.class, p.text("place")))),
            new FactCodec<>(
                    "bottles.swapped",
                    1,
                    CareFact.BottlesSwapped.class,
                    f -> new Payload().with("out", f.out().value()).with("in", f.in().value()),
                    p -> new CareFact.BottlesSwapped(new BottleId(p.text("out")), new BottleId(p.text("in")))),
            new FactCodec<>(
                    "shift.started",
                    1,
                    CareFact.ShiftStarted.class,
                    f -> new Payload().with("at", TimeText.write(f.at())),
                    p -> new CareFact.ShiftStarted(Parts.instant(p.text("at")))),
            new FactCodec<>(
                    "emergency-card.set",
                    1,
                    CareFact.EmergencyCardSet.class,
                    f -> write(f.help()),
                    p -> new CareFact.EmergencyCardSet(help(p))),
            new FactCodec<>(
                    "address.set",
                    1,
                    CareFact.AddressSet.class,
                    f -> new Payload().with("address", f.address()),
                    p -> new CareFact.AddressSet(p.text("address"))));

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

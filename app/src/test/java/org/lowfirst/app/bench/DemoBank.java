package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;

/** The supplies in the story of the demo bench: rented, read, exchanged, paid for. */
final class DemoBank {

    private static final char FIRST_NAME = 'A';

    /** Share of what a plan says a bottle gets that it does not get, because it is warm when its gauge shows the target. */
    private static final double KEPT = 0.08;

    private final DemoPen pen;
    private final DemoMoney money;
    private final Map<String, DemoMoney.Stay> stays = new LinkedHashMap<>();
    private final Map<SupplyId, String> serials = new LinkedHashMap<>();

    DemoBank(DemoPen pen, DemoMoney money) {
        this.pen = pen;
        this.money = money;
    }

    void setUp() {
        connect("50", 74);
        connect("50", 121);
        connect("50", 168);
        connect("40", 197);
    }

    /** When each supply came and left, by serial number. */
    Map<String, DemoMoney.Stay> stays() {
        return stays;
    }

    void read() {
        for (SupplyView view : pen.benches.keepingTheBank().bank(DemoPen.BENCH).supplies()) {
            Reading reading = pen.reads(shows(view));
            DemoPen.recorded(pen.benches
                    .takingReadings()
                    .take(DemoPen.BENCH, new TakeReading(view.supply().id(), reading), pen.submission()));
        }
    }

    private static int shows(SupplyView view) {
        return shows(
                view.supply().latest().pressure().gauge().toBar(),
                view.estimate().toBar());
    }

    /** What a supply shows after bottles that were warm, when it showed {@code before} and should show {@code planned} [bar]. */
    static int shows(double before, double planned) {
        return (int) Math.round(planned + KEPT * Math.max(0.0, before - planned));
    }

    /** A reading typed with two digits the wrong way round, and put right ten minutes later. */
    void slip() {
        SupplyView view =
                pen.benches.keepingTheBank().bank(DemoPen.BENCH).supplies().get(1);
        SupplyId supply = view.supply().id();
        int right = shows(view);
        Reading wrong = pen.reads(right + 63);
        long seq = DemoPen.recorded(
                pen.benches.takingReadings().take(DemoPen.BENCH, new TakeReading(supply, wrong), pen.submission()));
        Reading shown = new Reading(DemoPen.bar(right), wrong.at(), wrong.temperature(), false, null);
        pen.minutes(10);
        DemoPen.recorded(pen.benches
                .correctingAnEntry()
                .replace(
                        DemoPen.BENCH,
                        seq,
                        "digits the wrong way round",
                        new Fact.ReadingTaken(supply, shown),
                        new Submission(new EntryKey("story-slip"), pen.somebody(), null, false)));
    }

    /** The lowest supply leaves and a full one takes its place. */
    void exchange() {
        ExchangingASupply acts = pen.benches.exchangingASupply();
        SupplyView lowest =
                pen.benches.keepingTheBank().bank(DemoPen.BENCH).supplies().get(0);
        SupplyId id = lowest.supply().id();
        DemoPen.recorded(acts.begin(DemoPen.BENCH, id, pen.by("Wren")));
        Reading left = pen.reads(shows(lowest));
        DemoPen.recorded(acts.readResidual(DemoPen.BENCH, id, left, pen.by("Wren")));
        DemoPen.recorded(
                acts.takeOff(DemoPen.BENCH, new RemoveSupply(id, left, "back to the supplier"), pen.submission()));
        pen.minutes(15);
        String old = serial(id);
        stays.put(old, stay(old).until(pen.today()));
        ConnectSupply newcomer = newcomer("50", 182 + pen.draw(14));
        DemoPen.recorded(acts.takeIn(DemoPen.BENCH, id, newcomer, paper(serial(newcomer.supply())), pen.submission()));
        money.pay(pen.today(), serial(newcomer.supply()), old);
    }

    /** One more supply came, its valve leaks, nobody may open it, and it is to go back with the next delivery. */
    void tagOut() {
        SupplyId id = connect("50", 196);
        pen.minutes(30);
        DemoPen.recorded(pen.benches
                .keepingTheBank()
                .stand(DemoPen.BENCH, new StandFact.SupplyTaggedOut(id, "valve leaks at the spindle"), pen.by("Wren")));
        pen.minutes(20);
        DemoPen.recorded(pen.benches.exchangingASupply().begin(DemoPen.BENCH, id, pen.by("Wren")));
    }

    private SupplyId connect(String litres, int bar) {
        ConnectSupply newcomer = newcomer(litres, bar);
        DemoPen.recorded(pen.benches.keepingTheBank().connect(DemoPen.BENCH, newcomer, pen.submission()));
        DemoPen.recorded(pen.benches
                .keepingTheBank()
                .stand(
                        DemoPen.BENCH,
                        new StandFact.SupplyDelivered(newcomer.supply(), paper(serial(newcomer.supply()))),
                        pen.by("Wren")));
        return newcomer.supply();
    }

    private ConnectSupply newcomer(String litres, int bar) {
        int number = serials.size();
        SupplyId id = DemoPen.supply(Character.toString((char) (FIRST_NAME + number)));
        String serial = "QM " + (2217 + 29 * number);
        serials.put(id, serial);
        stays.put(serial, new DemoMoney.Stay(pen.today(), LocalDate.MAX));
        SupplyDetails details = new SupplyDetails(
                Character.toString((char) (FIRST_NAME + number)), serial, DemoPen.litres(litres), DemoPen.bar(200));
        return new ConnectSupply(id, details, pen.reads(bar));
    }

    private String serial(SupplyId id) {
        return serials.getOrDefault(id, "");
    }

    private DemoMoney.Stay stay(String serial) {
        return stays.getOrDefault(serial, new DemoMoney.Stay(pen.today(), pen.today()));
    }

    private Delivery paper(String serial) {
        return new Delivery("L-" + serial.substring(3), pen.today(), "Holm Gases");
    }
}

package org.lowfirst.app.paper;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.station.due.DueKind;

/**
 * Prints what a bench needs on paper, as its journal stands now. Thread-safe. Every method that is given a bench throws
 * {@link NoSuchElementException} when there is none.
 */
public final class PrintingPapers {

    private final Benches benches;
    private final Clock clock;
    private final Press press;

    /**
     * @param clock the time, and the zone in which the bench stands
     * @param locale language of the papers
     */
    public PrintingPapers(Benches benches, Clock clock, Locale locale) {
        this.benches = benches;
        this.clock = clock;
        this.press = new Press(locale, clock.getZone());
    }

    /** A label for every supply of the bank. */
    public PrintedPaper supplyLabels(BenchId bench, PaperSize size) {
        BankView bank = benches.keepingTheBank().bank(bench);
        List<SupplyLabels.Label> labels = bank.supplies().stream()
                .map(view -> label(view, bank.in(view.bank()).size()))
                .toList();
        return press.print(new SupplyLabels(heading(bench), labels), size);
    }

    private static SupplyLabels.Label label(SupplyView view, int of) {
        SupplyDetails details = view.supply().details();
        return new SupplyLabels.Label(
                view.rank(),
                of,
                view.bank(),
                view.standing(),
                details.name(),
                details.serial(),
                details.waterVolume().stated(),
                details.servicePressure());
    }

    /**
     * Tags for all bottles in use.
     *
     * @param address the whole address of a bottle's page
     */
    public PrintedPaper bottleTags(BenchId bench, Function<BottleId, String> address, PaperSize size) {
        return tags(bench, inUse(bench), address, size);
    }

    /** A tag for one bottle; nothing when there is no such bottle. */
    public Optional<PrintedPaper> findBottleTag(
            BenchId bench, BottleId id, Function<BottleId, String> address, PaperSize size) {
        return getBench(bench).findBottle(id).map(bottle -> tags(bench, List.of(bottle), address, size));
    }

    private PrintedPaper tags(BenchId bench, List<Bottle> bottles, Function<BottleId, String> address, PaperSize size) {
        List<DueItem> due = benches.askingWhatIsDue().sheet(bench).list().items();
        List<BottleTags.Tag> tags = bottles.stream()
                .map(bottle -> tag(bottle.details(), due, address.apply(bottle.id())))
                .toList();
        return press.print(new BottleTags(heading(bench), tags), size);
    }

    private static BottleTags.Tag tag(BottleDetails details, List<DueItem> due, String address) {
        DueItem first = due.stream()
                .filter(item -> item.subject().equals(details.name()))
                .filter(item -> item.kind() == DueKind.CYLINDER_TEST || item.kind() == DueKind.CYLINDER_LIFE)
                .min(Comparator.comparing(DueItem::lastDay))
                .orElse(null);
        return new BottleTags.Tag(
                details.name(),
                details.owner(),
                details.waterVolume().stated(),
                details.servicePressure(),
                details.usualTarget(),
                first,
                address);
    }

    /** The bank, the bottles, and what the next fill of each would be. */
    public PrintedPaper benchSheet(BenchId id, PaperSize size) {
        Heading heading = heading(id);
        Bench bench = getBench(id);
        NextFills next = new NextFills(bench, benches.planningAFill(), press.lettering(), heading.printedAt());
        List<BenchSheet.SupplyRow> supplies = benches.keepingTheBank().bank(id).supplies().stream()
                .map(PrintingPapers::supply)
                .toList();
        List<BenchSheet.BottleRow> bottles =
                inUse(id).stream().map(bottle -> bottle(bottle, next)).toList();
        return press.print(
                new BenchSheet(heading, bench.settings().units(), supplies, bench.usualBank(), bottles), size);
    }

    private static BenchSheet.SupplyRow supply(SupplyView view) {
        SupplyDetails details = view.supply().details();
        return new BenchSheet.SupplyRow(
                view.bank(),
                view.rank(),
                view.standing(),
                details.name(),
                details.waterVolume().stated(),
                view.estimate(),
                view.supply().latest());
    }

    private static BenchSheet.BottleRow bottle(Bottle bottle, NextFills next) {
        BottleDetails details = bottle.details();
        return new BenchSheet.BottleRow(
                details.name(),
                details.owner(),
                details.waterVolume().stated(),
                details.servicePressure(),
                bottle.latest(),
                next.of(bottle));
    }

    /** A log to fill in by hand, with columns for the supplies of the bank. */
    public PrintedPaper blankLog(BenchId bench, PaperSize size) {
        List<String> supplies = benches.keepingTheBank().bank(bench).supplies().stream()
                .map(view -> view.supply().details().name())
                .toList();
        return press.print(
                new BlankLog(heading(bench), getBench(bench).settings().units(), supplies), size);
    }

    /**
     * The record of the fill that an entry is about; nothing when it is about none, or the fill was taken back.
     *
     * @param seq number of any entry of the fill
     * @throws NoSuchElementException when there is no such entry
     */
    public Optional<PrintedPaper> findFillRecord(BenchId bench, long seq, PaperSize size) {
        return FillStory.find(benches.journal(), bench, seq).map(story -> press.print(record(bench, story), size));
    }

    /** The record of a fill; nothing when there is no such fill, or it was taken back. */
    public Optional<PrintedPaper> findFillRecord(BenchId bench, FillId fill, PaperSize size) {
        return FillStory.find(benches.journal(), bench, fill).map(story -> press.print(record(bench, story), size));
    }

    private FillRecord record(BenchId id, FillStory story) {
        Bench bench = getBench(id);
        List<FillRecord.EntryRow> entries = story.entries().stream()
                .map(seq -> entry(benches.readingTheJournal().getLine(id, seq)))
                .toList();
        return new FillRecord(
                heading(id),
                bench.getBottle(story.bottle()).details(),
                story.target(),
                story.before(),
                story.after(),
                story.ending(),
                story.stages().stream().map(stage -> stage(stage, bench)).toList(),
                entries);
    }

    private static FillRecord.StageRow stage(Stage stage, Bench bench) {
        return new FillRecord.StageRow(
                name(bench, stage.supply()), stage.bottleAfter(), stage.supplyBefore(), stage.supplyAfter());
    }

    private static String name(Bench bench, SupplyId supply) {
        return bench.getSupply(supply).details().name();
    }

    private static FillRecord.EntryRow entry(JournalLine line) {
        return new FillRecord.EntryRow(
                line.entry().seq(), line.entry().origin().author(), line.sentence(), line.hash());
    }

    /** What to do first in an emergency, with the local numbers entered. */
    public PrintedPaper emergencyCard(BenchId bench, PaperSize size) {
        LocalHelp help = benches.keepingLocalHelp().help(bench);
        List<EmergencyCard.LocalNumber> numbers = help.numbers().stream()
                .map(one -> new EmergencyCard.LocalNumber(one.who(), one.dial()))
                .toList();
        return press.print(new EmergencyCard(heading(bench), help.place(), help.meetingPoint(), numbers), size);
    }

    /** What one person owes for one month; whoever keeps the charges makes the lines. */
    public PrintedPaper monthStatement(MonthStatement statement, PaperSize size) {
        return press.print(statement, size);
    }

    /** What a paper of this bench says of itself now. */
    public Heading heading(BenchId bench) {
        Instant now = clock.instant();
        return new Heading(
                getBench(bench).settings().name(), now, benches.journal().head(bench));
    }

    private List<Bottle> inUse(BenchId bench) {
        return benches.registeringBottles().listBottles(bench).stream()
                .filter(Bottle::inUse)
                .toList();
    }

    private Bench getBench(BenchId bench) {
        return benches.openingABench()
                .findBench(bench)
                .orElseThrow(() -> new NoSuchElementException("There is no bench " + bench + "."));
    }
}

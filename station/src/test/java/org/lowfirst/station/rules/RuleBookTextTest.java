package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RuleBookTextTest {

    private static final String HEAD = "book = x\ntitle = X\n";
    private static final String RULE =
            "[x.life]\nkind = life\ncountry = any\nsource = here\nstatus = bench\nfrom = 2026-01-01\n";

    static List<RuleBook> builtIn() {
        return List.of(BuiltInBooks.us(), BuiltInBooks.eu());
    }

    @ParameterizedTest
    @MethodSource("builtIn")
    void whatIsWrittenReadsBackTheSame(RuleBook book) {
        String text = RuleBookText.write(book);

        assertThat(RuleBookText.read("x", text)).isEqualTo(new RuleBookReading.Read(book));
        assertThat(RuleBookText.write(((RuleBookReading.Read) RuleBookText.read("x", text)).book()))
                .isEqualTo(text);
    }

    @Test
    void theBuiltInBooksTogetherUseEveryKindOfRule() {
        Set<RuleKind> used = builtIn().stream()
                .flatMap(book -> book.rules().stream())
                .map(FillRule::kind)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(RuleKind.class)));

        assertThat(used).isEqualTo(EnumSet.allOf(RuleKind.class));
    }

    @Test
    void everyKindOfRuleHasAWord() {
        assertThat(FillRule.class.getPermittedSubclasses()).hasSameSizeAs(RuleKind.values());
        assertThat(Stream.of(RuleKind.values()).map(RuleKind::word)).doesNotHaveDuplicates();
    }

    @Test
    void rulesFromMemoryAndOfTheTradeSayThatTheyAre() {
        assertThat(builtIn().stream().flatMap(book -> book.rules().stream()).map(FillRule::heading))
                .filteredOn(heading -> heading.source().contains("no source"))
                .isNotEmpty()
                .allMatch(heading -> heading.status() == RuleStatus.COMMON_PRACTICE);
    }

    private static RuleBookReading.Malformed malformed(String text) {
        RuleBookReading reading = RuleBookText.read("x.rules", text);
        assertThat(reading).isInstanceOf(RuleBookReading.Malformed.class);
        return (RuleBookReading.Malformed) reading;
    }

    @Test
    void theFirstWrongLineIsShownWithACaret() {
        RuleBookReading.Malformed wrong = malformed(HEAD + RULE + "override = never\nyears = two\n");

        assertThat(wrong.message()).isEqualTo("\"two\" is not a whole number.\nx.rules:10:9\nyears = two\n        ^");
    }

    @Test
    void everyKindOfSlipIsNamed() {
        assertThat(malformed(HEAD + RULE + "override = never\n").problem())
                .isEqualTo("The setting \"years\" is missing.");
        assertThat(malformed(HEAD + RULE + "override = never\nyears = 0\n").problem())
                .isEqualTo("\"years\" must be above 0.");
        assertThat(malformed(HEAD + RULE + "override = never\nyears = 5\nyers = 6\n")
                        .problem())
                .isEqualTo("\"yers\" is not a setting of this kind.");
        assertThat(malformed(HEAD + RULE + "override = never\nyears = 5\nyears = 6\n")
                        .problem())
                .isEqualTo("\"years\" is set twice.");
        assertThat(malformed(HEAD + RULE + "override = sometimes\nyears = 5\n").problem())
                .startsWith("\"sometimes\" is not one of");
        assertThat(malformed(HEAD + RULE + "override = second person\nyears = 5\n")
                        .problem())
                .contains("cannot be set aside");
        assertThat(malformed(HEAD + "years\n").problem()).isEqualTo("This is not \"key = value\".");
        assertThat(malformed(HEAD + "[x\n").problem()).startsWith("A rule opens with its id");
        assertThat(malformed(HEAD + RULE.replace("life]", "Life]") + "override = never\nyears = 5\n")
                        .problem())
                .contains("must be small letters");
        assertThat(malformed(HEAD + RULE + "override = never\nyears = 5\n").problem())
                .contains("must have a rule of kind \"due-month\"");
        assertThat(malformed("title = X\n").problem()).isEqualTo("The setting \"book\" is missing.");
        assertThat(malformed(HEAD + RULE.replace("2026-01-01", "2026-13-01") + "override = never\nyears = 5\n")
                        .line())
                .isEqualTo(8);
    }

    @Test
    void aChangedBookKeepsWhatEveryBookMustHave() {
        RuleBook us = BuiltInBooks.us();

        assertThat(us.without("us.service-pressure"))
                .isEqualTo(new BookChange.NotChanged(BookChange.Problem.REQUIRED_RULE, "us.service-pressure"));
        assertThat(us.without("us.nothing"))
                .isEqualTo(new BookChange.NotChanged(BookChange.Problem.NO_SUCH_RULE, "us.nothing"));
        RuleBook less = ((BookChange.Changed) us.without("us.consent")).book();
        assertThat(less.rules()).hasSize(us.rules().size() - 1);
        FillRule remark = new Remark(
                new RuleHeading(
                        "us.due-month",
                        "any",
                        "here",
                        RuleStatus.BENCH,
                        new InForce(LocalDate.of(2026, 1, 1), null),
                        OverridePolicy.NEVER),
                AppliesTo.ALL,
                Advice.ASK_OWNER);
        assertThat(us.with(remark))
                .isEqualTo(new BookChange.NotChanged(BookChange.Problem.REQUIRED_RULE, "us.due-month"));
    }

    @Test
    void rulesHoldFromTheirFirstDayToTheirLast() {
        RuleBook us = BuiltInBooks.us();
        RuleHeading later = new RuleHeading(
                "bench.retest",
                "any",
                "decided by the bench",
                RuleStatus.BENCH,
                new InForce(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 31)),
                OverridePolicy.NEVER);
        RuleBook changed =
                ((BookChange.Changed) us.with(new RetestInterval(later, AppliesTo.specifications("3AA"), 1))).book();

        assertThat(changed.judge(Cylinders.sound(), LocalDate.of(2026, 6, 30)).refusals())
                .isEmpty();
        assertThat(changed.judge(Cylinders.sound(), LocalDate.of(2026, 7, 1)).refusals())
                .isNotEmpty();
        assertThat(changed.judge(Cylinders.sound(), LocalDate.of(2026, 8, 1)).refusals())
                .isEmpty();
    }

    @Test
    void noDayIsWithoutTheRulesEveryBookMustHave() {
        RuleBook us = BuiltInBooks.us();
        LocalDate before = LocalDate.of(1999, 12, 31);

        assertThat(us.rules()).noneMatch(rule -> rule.heading().inForce().on(before));
        assertThat(us.judge(Cylinders.sound(), before).refusals())
                .extracting(Finding::advice)
                .contains(Advice.ADD_RULE_FOR_SPECIFICATION);
    }

    @Test
    void limitsOfLifeAndRatingCannotBeMadeOverridable() {
        RuleHeading soft = new RuleHeading(
                "x", "any", "here", RuleStatus.BENCH, new InForce(LocalDate.EPOCH, null), OverridePolicy.SECOND_PERSON);

        assertThatThrownBy(() -> new LifeLimit(soft, AppliesTo.ALL, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CycleLimit(soft, AppliesTo.ALL, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ServicePressureLimit(soft, Cylinders.AT_70_F))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

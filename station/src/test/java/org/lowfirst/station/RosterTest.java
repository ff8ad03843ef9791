package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Who may do what at the bench, and how people come and go. */
final class RosterTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    @Test
    void whileNobodyIsDescribedAsResponsibleEverybodyOnTheListIs() {
        Roster roster = Journal.given().bench().roster();
        assertThat(roster.everybodyResponsible()).isTrue();
        assertThat(roster.isResponsible("Ida")).isTrue();
        assertThat(roster.isResponsible("Tom")).isTrue();
        assertThat(roster.isResponsible("Ben")).isFalse();
        assertThat(roster.keepsCharges("Tom")).isTrue();
        assertThat(roster.findWhySecond("Tom", DAY)).isEmpty();
    }

    @Test
    void onceSomebodyIsDescribedAsResponsibleTheOthersAreNot() {
        Roster roster = Journal.given(described("Ida", null, Role.RESPONSIBLE), described("Ann", null, Role.TREASURER))
                .bench()
                .roster();
        assertThat(roster.isResponsible("Ida")).isTrue();
        assertThat(roster.isResponsible("Tom")).isFalse();
        assertThat(roster.maySetAside("Ida", "Tom")).isTrue();
        assertThat(roster.maySetAside("Ida", "Ida")).isFalse();
        assertThat(roster.keepsCharges("Ann")).isTrue();
        assertThat(roster.keepsCharges("Tom")).isFalse();
    }

    @Test
    void whoIsDescribedJoinsTheListAndWhoLeftIsGoneFromIt() {
        Bench bench = Journal.given(
                        described("Ben", null, Role.SUPERVISED), new CrewFact.PersonLeft("Tom", "moved away"))
                .bench();
        assertThat(bench.settings().people()).containsExactly("Ida", "Ben");
        assertThat(bench.roster().find("Ben")).isPresent();
        assertThat(Journal.given(described("Tom", null, Role.RESPONSIBLE), new CrewFact.PersonLeft("Tom", "moved away"))
                        .bench()
                        .roster()
                        .everybodyResponsible())
                .isTrue();
    }

    @Test
    void aSecondPersonIsNeededUnderSupervisionWithoutTheRoleAndOnceACheckOutIsPast() {
        Roster roster = Journal.given(
                        described("Ben", null, Role.SUPERVISED),
                        described("Ann", null, Role.TREASURER),
                        described("Kai", DAY.minusDays(1), Role.FILLER),
                        described("Mia", DAY, Role.FILLER))
                .bench()
                .roster();
        assertThat(roster.findWhySecond("Ben", DAY)).contains(WhySecond.SUPERVISED);
        assertThat(roster.findWhySecond("Ann", DAY)).contains(WhySecond.NOT_A_FILLER);
        assertThat(roster.findWhySecond("Kai", DAY)).contains(WhySecond.CHECK_OUT_PAST);
        assertThat(roster.findWhySecond("Mia", DAY)).isEmpty();
        assertThat(roster.findWhySecond("Mia", DAY.plusDays(1))).contains(WhySecond.CHECK_OUT_PAST);
        assertThat(roster.mayStandBeside("Mia", "Ben", DAY)).isTrue();
        assertThat(roster.mayStandBeside("Kai", "Ben", DAY)).isFalse();
        assertThat(roster.mayStandBeside("Ben", "Ben", DAY)).isFalse();
        assertThat(roster.mayStandBeside("Zoe", "Ben", DAY)).isFalse();
    }

    @Test
    void aFillUnderSupervisionBeginsWithASecondPersonAndIsRecordedEitherWay() {
        Journal journal =
                Markings.given(described("Ida", null, Role.SUPERVISED), described("Kai", null, Role.SUPERVISED));
        Command.StartFill start =
                new Command.StartFill(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 9));
        assertThat(journal.when(start)).isEqualTo(Refused.of(Rule.FILLS_NOT_ALONE, "Ida"));
        assertThat(journal.when(new Command.StartFillBeside(start, "Ida", "Kai")))
                .isEqualTo(Refused.of(Rule.CANNOT_STAND_BESIDE, "Kai"));
        assertThat(journal.when(new Command.StartFillBeside(start, "Ida", "Tom")))
                .isEqualTo(new Accepted(
                        List.of(start.fact(), new CrewFact.SecondPersonNamed(Larkmoor.FILL, "Ida", "Tom"))));
        assertThat(journal.when(new Command.RecordFill(
                        Larkmoor.FILL,
                        Larkmoor.M_03,
                        null,
                        Larkmoor.reads("40", 9),
                        Larkmoor.reads("150", 20),
                        List.of())))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void anEntryIsSignedBySomebodyElseAndOnce() {
        Journal journal = Journal.given(new CrewFact.EntrySigned(5, "Tom"));
        Entry entry = journal.entry(5);
        assertThat(journal.bench().areas().crew().signers(5)).containsExactly("Tom");
        assertThat(journal.when(new Command.SignEntry(entry, "Tom"))).isEqualTo(Refused.of(Rule.ALREADY_SIGNED, "Tom"));
        assertThat(journal.when(new Command.SignEntry(entry, "Ida")))
                .isEqualTo(Refused.of(Rule.SIGNER_IS_AUTHOR, "Ida"));
        assertThat(journal.when(new Command.SignEntry(entry, "Zoe"))).isEqualTo(Refused.of(Rule.PERSON_UNKNOWN, "Zoe"));
    }

    @Test
    void onlyTheResponsibleDescribePeople() {
        Journal journal = Journal.given(described("Tom", null, Role.RESPONSIBLE));
        assertThat(journal.when(new Command.Enter(described("Ben", null, Role.FILLER))))
                .isEqualTo(Refused.of(Rule.NOT_RESPONSIBLE, "Ida"));
        assertThat(Journal.given().when(new Command.Enter(described("Ben", null, Role.FILLER))))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void anAttestNeedsSomebodyWhoSaysSo() {
        CrewFact nobody = new CrewFact.PersonDescribed(
                new PersonDetails("Ben", Set.of(), new Attest(LocalDate.of(2028, 2, 29), " "), null));
        assertThat(Journal.given().when(new Command.Enter(nobody))).isEqualTo(Refused.of(Rule.SOURCE_EMPTY, "Ben"));
    }

    @Test
    void somebodyIsAlwaysLeftToChooseFrom() {
        Journal journal = Journal.given(new CrewFact.PersonLeft("Tom", "moved away"));
        assertThat(journal.when(new Command.Enter(new CrewFact.PersonLeft("Ida", "moved away"))))
                .isEqualTo(Refused.of(Rule.LAST_PERSON, "Ida"));
        assertThat(journal.when(new Command.Enter(new CrewFact.PersonLeft("Zoe", "moved away"))))
                .isEqualTo(Refused.of(Rule.PERSON_UNKNOWN, "Zoe"));
    }

    private static CrewFact described(String name, @Nullable LocalDate checkOut, Role role) {
        return new CrewFact.PersonDescribed(new PersonDetails(
                name, Set.copyOf(List.of(role)), null, checkOut == null ? null : new Attest(checkOut, "Ida")));
    }
}

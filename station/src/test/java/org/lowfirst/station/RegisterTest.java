package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.Journal.given;
import static org.lowfirst.station.Larkmoor.A;
import static org.lowfirst.station.Larkmoor.M_03;
import static org.lowfirst.station.Larkmoor.bar;
import static org.lowfirst.station.Larkmoor.bottle;
import static org.lowfirst.station.Larkmoor.litres;
import static org.lowfirst.station.Larkmoor.reads;
import static org.lowfirst.station.Larkmoor.supply;

import org.junit.jupiter.api.Test;

class RegisterTest {

    private static final SupplyId D = new SupplyId("supply-d");
    private static final BottleId M_04 = new BottleId("m-04");

    @Test
    void aSupplyIsConnectedAtWhatItReads() {
        assertThat(given().when(new Command.ConnectSupply(D, supply("D"), reads("148", 9))))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void twoSuppliesOfTheBankDoNotShareAName() {
        assertThat(given().when(new Command.ConnectSupply(D, supply(" a "), reads("148", 9))))
                .isEqualTo(Refused.of(Rule.NAME_TAKEN, " a "));
    }

    @Test
    void theNameOfARemovedSupplyIsFreeAgain() {
        Journal journal = given(new Fact.SupplyRemoved(A, reads("44", 9), "to the supplier"));
        assertThat(journal.bench().bank()).extracting(Supply::id).containsExactly(Larkmoor.B, Larkmoor.C);
        assertThat(journal.bench().getSupply(A).latest()).isEqualTo(reads("44", 9));
        assertThat(journal.when(new Command.ConnectSupply(D, supply("A"), reads("200", 9))))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void anIdIsUsedOnce() {
        assertThat(given().when(new Command.ConnectSupply(A, supply("E"), reads("148", 9))))
                .isEqualTo(Refused.of(Rule.ID_TAKEN, "supply-a"));
    }

    @Test
    void aRemovedSupplyCannotBeRemovedAgain() {
        Journal journal = given(new Fact.SupplyRemoved(A, null, "to the supplier"));
        assertThat(journal.when(new Command.RemoveSupply(A, null, "again")))
                .isEqualTo(Refused.of(Rule.SUPPLY_NOT_CONNECTED, "A"));
    }

    @Test
    void anUnusualServicePressureIsAskedAboutAndTakenOnceConfirmed() {
        BottleDetails details = new BottleDetails("M-04", "Tom", litres("3"), bar("450"), null, null);
        Command command = new Command.RegisterBottle(M_04, details, null);
        assertThat(given().when(command))
                .isEqualTo(new Refused(Rule.SERVICE_PRESSURE_UNUSUAL, "M-04", bar("450"), bar("420")));
        assertThat(given().when(command, true)).isInstanceOf(Accepted.class);
    }

    @Test
    void psiTypedIntoABarBenchIsNoServicePressure() {
        BottleDetails details = new BottleDetails("M-04", "Tom", litres("3"), bar("2015"), null, null);
        Command command = new Command.RegisterBottle(M_04, details, null);
        assertThat(given().when(command, true))
                .isEqualTo(new Refused(Rule.SERVICE_PRESSURE_IMPOSSIBLE, "M-04", bar("2015"), bar("470")));
    }

    @Test
    void aWaterVolumeOfZeroIsRefused() {
        BottleDetails details = new BottleDetails("M-04", "Tom", litres("0"), bar("200"), null, null);
        assertThat(given().when(new Command.RegisterBottle(M_04, details, null)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.rule()).isEqualTo(Rule.WATER_VOLUME_NOT_ABOVE_ZERO));
    }

    @Test
    void aUsualTargetAboveTheServicePressureIsRefused() {
        BottleDetails details = new BottleDetails("M-04", "Tom", litres("3"), bar("200"), null, bar("220"));
        assertThat(given().when(new Command.RegisterBottle(M_04, details, null)))
                .isEqualTo(new Refused(Rule.USUAL_TARGET_ABOVE_SERVICE_PRESSURE, "M-04", bar("220"), bar("200")));
    }

    @Test
    void amendingChangesTheDetailsAndKeepsTheReading() {
        Bottle amended =
                given(new Fact.BottleAmended(M_03, bottle("M-03 red"))).bench().getBottle(M_03);
        assertThat(amended.details().name()).isEqualTo("M-03 red");
        assertThat(amended.latest()).isEqualTo(reads("40", 0));
    }

    @Test
    void aBottleIsRetiredOnceAndWithAReason() {
        assertThat(given().when(new Command.RetireBottle(M_03, " "))).isEqualTo(Refused.of(Rule.REASON_EMPTY, ""));
        assertThat(given(new Fact.BottleRetired(M_03, "dented")).when(new Command.RetireBottle(M_03, "dented")))
                .isEqualTo(Refused.of(Rule.BOTTLE_RETIRED, "M-03"));
    }

    @Test
    void aBenchOpensOnce() {
        assertThat(given().when(new Command.OpenBench(Larkmoor.settings())))
                .isEqualTo(Refused.of(Rule.BENCH_ALREADY_OPEN, "Larkmoor Gliders"));
    }

    @Test
    void nothingHappensAtABenchThatIsNotOpen() {
        Circumstances now = new Circumstances(Larkmoor.TEN, Larkmoor.TEN, false);
        assertThat(Deciding.decide(null, new Command.TakeReading(A, reads("60", 0)), now))
                .isEqualTo(Refused.of(Rule.BENCH_NOT_OPEN, ""));
    }
}

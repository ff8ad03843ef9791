package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;

class GaugeTest {

    private static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    private static GaugeDetails gauge(String fullScale, String percent) {
        return new GaugeDetails("G1", GaugeUse.SUPPLIES, bar(fullScale), bar("5"), new BigDecimal(percent), null, null);
    }

    @Test
    void aGaugeNeedsAScaleAndOneStatementOfItsAccuracy() {
        assertThat(GaugeRules.check(gauge("250", "1.6"))).isNull();
        assertThat(rule(gauge("0", "1.6"))).isEqualTo(Rule.GAUGE_SCALE_NOT_ABOVE_ZERO);
        assertThat(rule(gauge("4", "1.6"))).isEqualTo(Rule.GAUGE_DIVISION_OUT_OF_RANGE);
        assertThat(rule(gauge("250", "0"))).isEqualTo(Rule.GAUGE_CLASS_OUT_OF_RANGE);
        assertThat(rule(gauge("250", "25"))).isEqualTo(Rule.GAUGE_CLASS_OUT_OF_RANGE);
        GaugeDetails neither = new GaugeDetails("G1", GaugeUse.SPARE, bar("250"), bar("5"), null, null, null);
        assertThat(rule(neither)).isEqualTo(Rule.GAUGE_ACCURACY_NEEDED);
        GaugeDetails both =
                new GaugeDetails("G1", GaugeUse.SPARE, bar("250"), bar("5"), BigDecimal.ONE, bar("3"), null);
        assertThat(rule(both)).isEqualTo(Rule.GAUGE_ACCURACY_NEEDED);
        GaugeDetails wild = new GaugeDetails("G1", GaugeUse.SPARE, bar("250"), bar("5"), null, bar("300"), null);
        assertThat(rule(wild)).isEqualTo(Rule.GAUGE_ERROR_OUT_OF_RANGE);
        GaugeDetails unnamed = new GaugeDetails(" ", GaugeUse.SPARE, bar("250"), bar("5"), null, bar("3"), null);
        assertThat(rule(unnamed)).isEqualTo(Rule.NAME_EMPTY);
    }

    @Test
    void aReadingAboveTheScaleIsRefusedAndBelowItTaken() {
        Journal journal = Journal.given(new Fact.GaugeDescribed(gauge("160", "1.6")));
        assertThat(journal.when(new Command.TakeReading(Larkmoor.B, Larkmoor.reads("170", 30))))
                .isEqualTo(new Refused(Rule.READING_ABOVE_FULL_SCALE, "G1", bar("170"), bar("160")));
        assertThat(journal.when(new Command.TakeReading(Larkmoor.B, Larkmoor.reads("117", 30))))
                .isInstanceOf(Accepted.class);
        journal.add(new Fact.GaugeRetired("G1", "dropped"));
        assertThat(journal.bench().gauges()).isEmpty();
        assertThat(journal.when(new Command.RetireGauge("G1", "dropped")))
                .isEqualTo(Refused.of(Rule.GAUGE_UNKNOWN, "G1"));
    }

    @Test
    void warmStopsNeedAResponsiblePersonAndAPublishedRule() {
        Journal journal = Journal.given();
        assertThat(journal.when(new Command.AllowWarmStop(new WarmStop("", "bench table"))))
                .isEqualTo(Refused.of(Rule.NAME_EMPTY, "person"));
        assertThat(journal.when(new Command.AllowWarmStop(new WarmStop("Ida", " "))))
                .isEqualTo(Refused.of(Rule.WARM_STOP_NEEDS_A_RULE, ""));
        WarmStop permission = new WarmStop("Ida", "bench table");
        journal.add(new Fact.WarmStopAllowed(permission));
        assertThat(journal.bench().warmStop()).isEqualTo(permission);
        journal.add(new Fact.WarmStopForbidden("Ida"));
        assertThat(journal.bench().warmStop()).isNull();
    }

    private static Rule rule(GaugeDetails gauge) {
        Refused refused = GaugeRules.check(gauge);
        if (refused == null) {
            throw new AssertionError("not refused: " + gauge);
        }
        return refused.rule();
    }
}

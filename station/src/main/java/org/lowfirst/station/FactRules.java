package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can have happened: values that no gauge, marking or wish can have. Every id in the fact is known. */
final class FactRules {

    private final Bench bench;
    private final RuleFigures figures;
    private final Circumstances circumstances;

    private FactRules(Bench bench, Circumstances circumstances) {
        this.bench = bench;
        this.figures = bench.settings().rules().figures();
        this.circumstances = circumstances;
    }

    static @Nullable Refused check(Bench bench, Fact fact, Circumstances circumstances) {
        return new FactRules(bench, circumstances).check(fact);
    }

    private @Nullable Refused check(Fact fact) {
        if (fact instanceof Fact.SettingsChanged f) {
            return SettingsRules.check(f.settings(), circumstances);
        } else if (fact instanceof Fact.SupplyConnected f) {
            return connected(f);
        } else if (fact instanceof Fact.SupplyAmended f) {
            return CylinderRules.check(f.details(), figures, circumstances);
        } else if (fact instanceof Fact.SupplyRemoved f) {
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : reading(f.supply(), f.residual());
        } else if (fact instanceof Fact.BottleRegistered f) {
            return registered(f);
        } else if (fact instanceof Fact.BottleAmended f) {
            return CylinderRules.check(f.details(), figures, circumstances);
        } else if (fact instanceof Fact.BottleRetired f) {
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : null;
        } else if (fact instanceof Fact.ReadingTaken f) {
            return reading(f.cylinder(), f.reading());
        } else if (fact instanceof Fact.WarmBottleRead f) {
            return warm(f);
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            return together(f);
        }
        if (fact instanceof Fact.GaugeDescribed f) {
            return GaugeRules.check(f.gauge());
        } else if (fact instanceof Fact.GaugeRetired f) {
            return retired(f);
        } else if (fact instanceof Fact.WarmStopAllowed f) {
            return allowed(f.permission());
        } else if (fact instanceof Fact.WarmStopForbidden f) {
            return f.responsible().isBlank() ? Refused.of(Rule.NAME_EMPTY, "person") : null;
        } else if (fact instanceof AreaFact f) {
            return AreaRules.check(bench, f, circumstances);
        }
        return new FillRules(bench, circumstances, this::reading).check(fact);
    }

    private @Nullable Refused warm(Fact.WarmBottleRead f) {
        String name = bench.getBottle(f.bottle()).details().name();
        Refused wrong = reading(f.bottle(), f.reading());
        return wrong == null ? ReadingRules.gasTemperature(name, f.gas(), figures) : wrong;
    }

    private @Nullable Refused retired(Fact.GaugeRetired f) {
        if (!bench.gauges().containsKey(f.gauge())) {
            return Refused.of(Rule.GAUGE_UNKNOWN, f.gauge());
        }
        return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, f.gauge()) : null;
    }

    private static @Nullable Refused allowed(WarmStop permission) {
        if (permission.responsible().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "person");
        }
        return permission.followed().isBlank() ? Refused.of(Rule.WARM_STOP_NEEDS_A_RULE, "") : null;
    }

    private @Nullable Refused connected(Fact.SupplyConnected f) {
        SupplyDetails details = f.details();
        Refused marking = CylinderRules.check(details, figures, circumstances);
        Refused wrong = marking == null ? GaugeRules.onScale(bench, f.supply(), f.reading()) : marking;
        return wrong != null
                ? wrong
                : ReadingRules.check(
                        details.name(),
                        f.reading(),
                        details.servicePressure(),
                        bench.settings().fullSupply(),
                        figures,
                        circumstances);
    }

    private @Nullable Refused registered(Fact.BottleRegistered f) {
        BottleDetails details = f.details();
        Refused marking = CylinderRules.check(details, figures, circumstances);
        if (marking != null || f.reading() == null) {
            return marking;
        }
        Refused offScale = GaugeRules.onScale(bench, f.bottle(), f.reading());
        return offScale != null
                ? offScale
                : ReadingRules.check(
                        details.name(), f.reading(), details.servicePressure(), null, figures, circumstances);
    }

    private @Nullable Refused together(Fact.TwoOpenedTogether f) {
        if (f.first().equals(f.second())) {
            return Refused.of(
                    Rule.SUPPLY_NAMED_TWICE,
                    bench.getSupply(f.first()).details().name());
        }
        Refused first = reading(f.first(), f.firstAfter());
        return first == null ? reading(f.second(), f.secondAfter()) : first;
    }

    @Nullable
    Refused reading(CylinderId cylinder, @Nullable Reading reading) {
        if (reading == null) {
            return null;
        }
        Refused offScale = GaugeRules.onScale(bench, cylinder, reading);
        return offScale == null ? plausible(cylinder, reading) : offScale;
    }

    private @Nullable Refused plausible(CylinderId cylinder, Reading reading) {
        if (cylinder instanceof SupplyId id) {
            Supply supply = bench.getSupply(id);
            return ReadingRules.check(
                    supply.details().name(),
                    reading,
                    supply.details().servicePressure(),
                    supply.latest().pressure(),
                    figures,
                    circumstances);
        } else if (cylinder instanceof BottleId id) {
            Bottle bottle = bench.getBottle(id);
            Reading latest = bottle.latest();
            return ReadingRules.check(
                    bottle.details().name(),
                    reading,
                    bottle.details().servicePressure(),
                    latest == null ? null : latest.pressure(),
                    figures,
                    circumstances);
        }
        throw new AssertionError("unhandled " + cylinder);
    }
}

package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.station.AreaFact;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.OutlookFact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.SupplyId;

/** Says a fact in a sentence, with the names the bench has now and the digits as they were typed. */
final class FactSentences {

    private final Wording wording;
    private final Bench bench;
    private final Map<FillId, BottleId> fills;

    /** @param fills the bottles of the fills that are told of, as far as they are known */
    FactSentences(Wording wording, Bench bench, Map<FillId, BottleId> fills) {
        this.wording = wording;
        this.bench = bench;
        this.fills = fills;
    }

    String of(Fact fact) {
        if (fact instanceof Fact.BenchOpened f) {
            return wording.text("bench.opened", Map.of("name", f.settings().name()));
        } else if (fact instanceof Fact.SettingsChanged) {
            return wording.text("bench.settings-changed", Map.of());
        } else if (fact instanceof Fact.SupplyConnected f) {
            return wording.text("supply.connected", Map.of("supply", f.details().name(), "reading", said(f.reading())));
        } else if (fact instanceof Fact.SupplyAmended f) {
            return wording.text("supply.amended", Map.of("supply", f.details().name()));
        } else if (fact instanceof Fact.SupplyRemoved f) {
            return wording.text(
                    f.residual() == null ? "supply.removed.unread" : "supply.removed",
                    Map.of("supply", name(f.supply()), "reading", said(f.residual()), "reason", f.reason()));
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            return wording.text(
                    "supplies.two-opened-together",
                    Map.of(
                            "first", name(f.first()),
                            "second", name(f.second()),
                            "firstAfter", said(f.firstAfter()),
                            "secondAfter", said(f.secondAfter())));
        } else if (fact instanceof Fact.ReadingTaken f) {
            return reading(f);
        } else if (fact instanceof Fact.WarmBottleRead f) {
            return wording.text(
                    "bottle.read-warm",
                    Map.of("bottle", name(f.bottle()), "reading", said(f.reading()), "gas", said(f.gas())));
        } else if (fact instanceof Fact.EntryCorrected f) {
            return correction(f);
        }
        return ofGauge(fact);
    }

    private String ofGauge(Fact fact) {
        if (fact instanceof Fact.GaugeDescribed f) {
            return wording.text(
                    "gauge.described",
                    Map.of(
                            "gauge",
                            f.gauge().name(),
                            "fullScale",
                            said(f.gauge().fullScale())));
        } else if (fact instanceof Fact.GaugeRetired f) {
            return wording.text("gauge.retired", Map.of("gauge", f.gauge(), "reason", f.reason()));
        } else if (fact instanceof Fact.WarmStopAllowed f) {
            return wording.text(
                    "warm-stop.allowed",
                    Map.of(
                            "responsible", f.permission().responsible(),
                            "followed", f.permission().followed()));
        } else if (fact instanceof Fact.WarmStopForbidden f) {
            return wording.text("warm-stop.forbidden", Map.of("responsible", f.responsible()));
        }
        return fact instanceof AreaFact f ? ofArea(f) : ofBottle(fact);
    }

    private String ofArea(AreaFact fact) {
        if (fact instanceof GateFact f) {
            return GateSentences.of(f, this);
        } else if (fact instanceof CrewFact f) {
            return CrewSentences.of(f, this);
        } else if (fact instanceof MoneyFact f) {
            return MoneySentences.of(f, this);
        } else if (fact instanceof CareFact f) {
            return CareSentences.of(f, this);
        } else if (fact instanceof StandFact f) {
            return StandSentences.of(f, this);
        } else if (fact instanceof SessionFact f) {
            return SessionSentences.of(f, this);
        } else if (fact instanceof OutlookFact f) {
            return OutlookSentences.of(f, this);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private String ofBottle(Fact fact) {
        if (fact instanceof Fact.BottleRegistered f) {
            return wording.text(
                    f.reading() == null ? "bottle.registered.unread" : "bottle.registered",
                    Map.of("bottle", f.details().name(), "reading", said(f.reading())));
        } else if (fact instanceof Fact.BottleAmended f) {
            return wording.text("bottle.amended", Map.of("bottle", f.details().name()));
        } else if (fact instanceof Fact.BottleRetired f) {
            return wording.text("bottle.retired", Map.of("bottle", name(f.bottle()), "reason", f.reason()));
        } else if (fact instanceof Fact.FillStarted f) {
            return wording.text(
                    "fill.started",
                    Map.of("bottle", name(f.bottle()), "before", said(f.before()), "target", said(f.target())));
        } else if (fact instanceof Fact.StageRecorded f) {
            return wording.text(
                    f.stage().supplyAfter() == null ? "stage.recorded.unread" : "stage.recorded",
                    Map.of(
                            "supply", name(f.stage().supply()),
                            "after", said(f.stage().bottleAfter()),
                            "supplyAfter", said(f.stage().supplyAfter())));
        } else if (fact instanceof Fact.FillFinished f) {
            return ofFill("fill.finished", f.fill(), "after", said(f.after()));
        } else if (fact instanceof Fact.FillAbandoned f) {
            return ofFill("fill.abandoned", f.fill(), "reason", f.reason());
        } else if (fact instanceof Fact.FillRecorded f) {
            return wording.text(
                    "fill.recorded",
                    Map.of("bottle", name(f.bottle()), "before", said(f.before()), "after", said(f.after())));
        }
        throw new AssertionError("unhandled " + fact);
    }

    private String ofFill(String key, FillId fill, String what, String value) {
        BottleId bottle = fills.get(fill);
        return bottle == null
                ? wording.text(key + ".unnamed", Map.of(what, value))
                : wording.text(key, Map.of("bottle", name(bottle), what, value));
    }

    private String reading(Fact.ReadingTaken f) {
        if (f.cylinder() instanceof SupplyId supply) {
            return wording.text("reading.taken.supply", Map.of("supply", name(supply), "reading", said(f.reading())));
        } else if (f.cylinder() instanceof BottleId bottle) {
            return wording.text("reading.taken.bottle", Map.of("bottle", name(bottle), "reading", said(f.reading())));
        }
        throw new AssertionError("unhandled " + f.cylinder());
    }

    private String correction(Fact.EntryCorrected f) {
        Fact replacement = f.replacement();
        String number = Long.toString(f.corrected());
        return replacement == null
                ? wording.text("entry.reversed", Map.of("number", number, "reason", f.reason()))
                : wording.text(
                        "entry.corrected",
                        Map.of("number", number, "reason", f.reason(), "replacement", of(replacement)));
    }

    /** One sentence of the message file. */
    String say(String key, Map<String, String> values) {
        return wording.text(key, values);
    }

    String name(SupplyId id) {
        return bench.findSupply(id).map(supply -> supply.details().name()).orElse(id.value());
    }

    String name(BottleId id) {
        return bench.findBottle(id).map(bottle -> bottle.details().name()).orElse(id.value());
    }

    /** Name of the bottle of a fill of a session. */
    String name(FillId id) {
        BottleId told = fills.get(id);
        if (told != null) {
            return name(told);
        }
        return bench.sessions()
                .findOpen(id)
                .or(() -> Optional.ofNullable(bench.sessions().latest()))
                .flatMap(session -> session.findWish(id))
                .map(wish -> name(wish.bottle()))
                .orElse(id.value());
    }

    String said(@Nullable Reading reading) {
        return reading == null ? wording.text("unread", Map.of()) : said(reading.pressure());
    }

    String said(StatedQuantity quantity) {
        return said(quantity.value()) + " " + quantity.symbol();
    }

    /** A number with the digits that were typed. */
    String said(BigDecimal number) {
        return Digits.in(wording.locale()).typed(number);
    }
}

package org.lowfirst.app.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.planning.study.AlternativeResult;
import org.lowfirst.planning.study.BreakEven;
import org.lowfirst.planning.study.CostParts;
import org.lowfirst.planning.study.CostSpread;
import org.lowfirst.planning.study.Estimate;
import org.lowfirst.planning.study.Limit;
import org.lowfirst.planning.study.SentBack;
import org.lowfirst.planning.study.StudyResult;
import org.lowfirst.planning.study.Usage;

/** A study as one JSON object on one line, see docs/schema/study-result.schema.json. */
public final class StudyJson {

    private final StudyDone study;
    private final StudyResult result;
    private final JsonLine json = new JsonLine();

    private StudyJson(StudyDone study) {
        this.study = study;
        this.result = study.result();
    }

    /** The object, with a new line at its end. */
    public static String of(StudyDone study) {
        return new StudyJson(study).text();
    }

    private String text() {
        json.openObject();
        json.key("runs").value((double) result.runs());
        json.key("runs_asked").value((double) result.runsAsked());
        String cheapest = result.cheapest();
        json.key("cheapest");
        if (cheapest == null) {
            json.nothing();
        } else {
            json.value(cheapest);
        }
        json.key("worst_imbalance").value(result.worstImbalance());
        json.key("alternatives").openList();
        result.alternatives().forEach(this::alternative);
        json.closeList();
        json.key("break_evens").openList();
        result.breakEvens().forEach(this::breakEven);
        json.closeList();
        json.key("notes").openList();
        List<String> notes = study.notes();
        notes.forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private void alternative(AlternativeResult one) {
        json.openObject();
        json.key("name").value(one.alternative().name());
        json.key("bank_size").value(one.alternative().bankSize());
        json.key("stored").value(one.alternative().stored());
        json.key("together").value(one.alternative().habit().together());
        estimate("cost_per_fill", one.costPerFill());
        estimate("above_cheapest", one.aboveCheapest());
        spread(one.spread());
        parts(one.parts());
        usage(one.usage());
        sentBack(one.sentBack());
        json.key("storage").openObject();
        json.key("places").value(one.storage().places());
        json.key("most_gas_mol").value(one.storage().mostGas().moles());
        json.key("most_gas_litres")
                .value(study.file()
                        .request()
                        .site()
                        .gas()
                        .freeVolume(one.storage().mostGas(), study.file().standard())
                        .toLitres());
        json.key("first_outlay").value(one.storage().firstOutlay());
        json.closeObject();
        limit(one.limit());
        json.closeObject();
    }

    private void spread(@Nullable CostSpread spread) {
        json.key("spread");
        if (spread == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("low").value(spread.low());
        json.key("middle").value(spread.middle());
        json.key("high").value(spread.high());
        json.closeObject();
    }

    private void parts(@Nullable CostParts parts) {
        json.key("parts");
        if (parts == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("content").value(parts.content());
        json.key("deliveries").value(parts.deliveries());
        json.key("rent").value(parts.rent());
        json.key("purchases").value(parts.purchases());
        json.key("boosting").value(parts.boosting());
        json.key("missed").value(parts.missed());
        json.closeObject();
    }

    private void usage(Usage usage) {
        estimate("fills_per_year", usage.fillsPerYear());
        estimate("missed_per_year", usage.missedPerYear());
        json.key("out_of_reach_per_year").value(usage.outOfReachPerYear());
        json.key("supplies_per_year").value(usage.suppliesPerYear());
        json.key("deliveries_per_year").value(usage.deliveriesPerYear());
        estimate("fills_per_supply", usage.fillsPerSupply());
        json.key("gas_from_before").value(usage.gasFromBefore());
    }

    private void sentBack(@Nullable SentBack back) {
        json.key("sent_back");
        if (back == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("per_year_mol").value(back.perYear().moles());
        estimate("share", back.share());
        json.key("mean_reading").openObject();
        json.key("psi").value(back.meanReading().toPsi());
        json.key("bar").value(back.meanReading().toBar());
        json.closeObject();
        json.closeObject();
    }

    private void limit(@Nullable Limit limit) {
        json.key("limit");
        if (limit == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("fills_per_supply").value(limit.fillsPerSupply());
        json.key("cost_per_fill").value(limit.costPerFill());
        json.closeObject();
    }

    private void breakEven(BreakEven one) {
        json.openObject();
        json.key("alternative").value(one.alternative());
        json.key("against").value(one.against());
        json.key("content_factor").value(one.contentFactor());
        json.key("delivery_factor").value(one.deliveryFactor());
        json.key("rent_factor").value(one.rentFactor());
        json.key("fills_per_year").value(one.fillsPerYear());
        json.closeObject();
    }

    private void estimate(String key, @Nullable Estimate estimate) {
        json.key(key);
        if (estimate == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("mean").value(estimate.mean());
        json.key("low").value(estimate.low());
        json.key("high").value(estimate.high());
        json.closeObject();
    }
}

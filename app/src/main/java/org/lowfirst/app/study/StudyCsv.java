package org.lowfirst.app.study;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.study.AlternativeResult;
import org.lowfirst.planning.study.CostParts;
import org.lowfirst.planning.study.Estimate;
import org.lowfirst.planning.study.SentBack;
import org.lowfirst.planning.study.StudyResult;

/** A study as a table: RFC 4180, one line for each alternative, all digits, empty where there is no number. */
public final class StudyCsv {

    private static final List<String> COLUMNS = List.of(
            "alternative",
            "bank_size",
            "stored",
            "together",
            "cost_per_fill",
            "cost_low",
            "cost_high",
            "above_cheapest",
            "content",
            "deliveries",
            "rent",
            "purchases",
            "boosting",
            "missed",
            "fills_per_year",
            "missed_per_year",
            "fills_per_supply",
            "supplies_per_year",
            "deliveries_per_year",
            "sent_back_share",
            "sent_back_reading_bar",
            "sent_back_reading_psi",
            "places",
            "first_outlay",
            "limit_fills_per_supply",
            "limit_cost_per_fill",
            "gas_from_before");

    private StudyCsv() {}

    public static String of(StudyDone study) {
        return of(study.result());
    }

    public static String of(StudyResult result) {
        return Stream.concat(
                        Stream.of(String.join(",", COLUMNS)),
                        result.alternatives().stream().map(StudyCsv::row))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String row(AlternativeResult one) {
        CostParts parts = one.parts();
        SentBack back = one.sentBack();
        Estimate cost = one.costPerFill();
        return Stream.of(
                        quoted(one.alternative().name()),
                        Integer.toString(one.alternative().bankSize()),
                        Integer.toString(one.alternative().stored()),
                        Integer.toString(one.alternative().habit().together()),
                        mean(cost),
                        cost == null ? "" : number(cost.low()),
                        cost == null ? "" : number(cost.high()),
                        mean(one.aboveCheapest()),
                        parts == null ? "" : number(parts.content()),
                        parts == null ? "" : number(parts.deliveries()),
                        parts == null ? "" : number(parts.rent()),
                        parts == null ? "" : number(parts.purchases()),
                        parts == null ? "" : number(parts.boosting()),
                        parts == null ? "" : number(parts.missed()),
                        mean(one.usage().fillsPerYear()),
                        mean(one.usage().missedPerYear()),
                        mean(one.usage().fillsPerSupply()),
                        number(one.usage().suppliesPerYear()),
                        number(one.usage().deliveriesPerYear()),
                        back == null ? "" : mean(back.share()),
                        back == null ? "" : number(back.meanReading().toBar()),
                        back == null ? "" : number(back.meanReading().toPsi()),
                        Integer.toString(one.storage().places()),
                        number(one.storage().firstOutlay()),
                        one.limit() == null ? "" : number(one.limit().fillsPerSupply()),
                        one.limit() == null ? "" : number(one.limit().costPerFill()),
                        number(one.usage().gasFromBefore()))
                .collect(Collectors.joining(","));
    }

    private static String mean(@Nullable Estimate estimate) {
        return estimate == null ? "" : number(estimate.mean());
    }

    private static String number(double value) {
        return Double.toString(value);
    }

    /** Quoted when it must be; a leading sign of a formula is defused for spreadsheets. */
    private static String quoted(String name) {
        String plain = name.matches("[=+@\\-\t].*") ? "'" + name : name;
        return plain.matches("[^,\"\\r\\n]*") ? plain : '"' + plain.replace("\"", "\"\"") + '"';
    }
}

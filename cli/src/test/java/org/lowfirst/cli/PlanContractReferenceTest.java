package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * The JSON of a plan against figures from outside.
 *
 * <p>Source of all figures: property values by the Schmidt & Wagner 1985 / Stewart et al. 1991 equation for oxygen, evaluated
 * with an open general-purpose library (CoolProp 8.0.0) and a second independent program, mass balance worked by hand; printed
 * to the digits used here. Tolerance: half a unit of the last printed digit.
 */
final class PlanContractReferenceTest {

    private static final Offset<Double> TENTH = within(0.05);
    private static final Offset<Double> HUNDREDTH = within(0.005);
    private static final Offset<Double> WHOLE = within(0.5);

    @Test
    void bankOfThree() {
        CommandRun run = CommandRun.planned("plans/bank-of-three.yaml");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.json().get("reaches_all").asBoolean()).isTrue();
        assertThat(run.json().get("temperature_K").asDouble()).isEqualTo(294.26);
        JsonNode steps = bottle(run).get("steps");
        assertThat(steps).hasSize(3);
        assertThat(psi(steps.get(0), "bottle_after")).isCloseTo(520.2, TENTH);
        assertThat(psi(steps.get(1), "bottle_after")).isCloseTo(1091.3, TENTH);
        assertThat(psi(steps.get(2), "bottle_after")).isEqualTo(1850.0);
        assertThat(psi(steps.get(2), "supply_after")).isCloseTo(2051.8, TENTH);
        assertThat(endings(steps)).containsExactly("equal", "equal", "target");
        assertThat(psi(run.json().get("supplies").get(2), "reading")).isCloseTo(2051.8, TENTH);
        assertThat(bottle(run).get("short_by").isNull()).isTrue();
    }

    @Test
    void bankThatCannotReach() {
        CommandRun run = CommandRun.planned("plans/cannot-reach.yaml");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.json().get("reaches_all").asBoolean()).isFalse();
        JsonNode steps = bottle(run).get("steps");
        assertThat(psi(steps.get(0), "bottle_after")).isCloseTo(364.5, TENTH);
        assertThat(psi(steps.get(1), "bottle_after")).isCloseTo(852.5, TENTH);
        assertThat(psi(steps.get(2), "bottle_after")).isCloseTo(1533.2, TENTH);
        assertThat(psi(bottle(run), "final")).isCloseTo(1533.2, TENTH);
        assertThat(psi(bottle(run), "short_by")).isCloseTo(2015.0 - 1533.2, TENTH);
        assertThat(bottle(run).get("fills_left").get("complete").asInt()).isZero();
        assertThat(psi(bottle(run).get("fills_left"), "next_stops_at")).isCloseTo(1533.2, TENTH);
    }

    @Test
    void singleSupplyFillsOneBottleAndTheNextStopsShort() {
        CommandRun run = CommandRun.planned("plans/single-supply.yaml");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(psi(run.json().get("supplies").get(0), "reading")).isCloseTo(2093.28, HUNDREDTH);
        assertThat(bottle(run).get("fills_left").get("complete").asInt()).isEqualTo(1);
        assertThat(psi(bottle(run).get("fills_left"), "next_stops_at")).isCloseTo(1988.59, HUNDREDTH);
    }

    @Test
    void equaliseThenFinishFromTheFullerSupply() {
        CommandRun run = CommandRun.planned("plans/equalise-and-finish.yaml");
        JsonNode steps = bottle(run).get("steps");
        assertThat(psi(steps.get(0), "bottle_after")).isCloseTo(1717.61, HUNDREDTH);
        assertThat(psi(steps.get(0), "supply_after")).isCloseTo(1717.61, HUNDREDTH);
        assertThat(steps.get(0).get("moved_mol").asDouble()).isCloseTo(12.4155, within(5e-5));
        assertThat(psi(steps.get(1), "supply_after")).isCloseTo(2182.20, HUNDREDTH);
        assertThat(steps.get(1).get("moved_mol").asDouble()).isCloseTo(2.64648, within(5e-6));
        assertThat(bottle(run).get("delivered_mol").asDouble()).isCloseTo(12.4155 + 2.64648, within(6e-5));
    }

    @Test
    void plainFillTakesTheLowestFirstAndLeavesSevenFills() {
        CommandRun run = CommandRun.planned("plans/plain-fill.yaml");
        assertThat(run.exit()).isEqualTo(0);
        JsonNode steps = bottle(run).get("steps");
        assertThat(names(steps, "supply")).containsExactly("A", "B", "C");
        assertThat(bar(steps.get(0), "bottle_after")).isCloseTo(60.0, TENTH);
        assertThat(bar(steps.get(1), "bottle_after")).isCloseTo(112.8, TENTH);
        assertThat(bar(steps.get(2), "bottle_after")).isEqualTo(150.0);
        JsonNode bank = run.json().get("supplies");
        assertThat(bar(bank.get(0), "reading")).isCloseTo(60.0, TENTH);
        assertThat(bar(bank.get(1), "reading")).isCloseTo(112.8, TENTH);
        assertThat(bar(bank.get(2), "reading")).isCloseTo(186.1, TENTH);
        assertThat(bottle(run).get("delivered_litres").asDouble()).isCloseTo(578.0, WHOLE);
        assertThat(bottle(run).get("fills_left").get("complete").asInt()).isEqualTo(7);
        assertThat(bar(bottle(run).get("fills_left"), "next_stops_at")).isCloseTo(147.1, TENTH);
        assertThat(notes(run)).anyMatch(note -> note.contains("fullest") && note.contains("3"));
    }

    @Test
    void waveCampCannotReachAndIsToldToExchangeTheLowest() {
        CommandRun run = CommandRun.planned("plans/wave-camp.yaml");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(bar(bottle(run), "final")).isCloseTo(123.8, TENTH);
        assertThat(bar(bottle(run), "short_by")).isCloseTo(26.2, TENTH);
        JsonNode bank = run.json().get("supplies");
        assertThat(bar(bank.get(0), "reading")).isCloseTo(40.0, TENTH);
        assertThat(bar(bank.get(1), "reading")).isCloseTo(87.7, TENTH);
        assertThat(bar(bank.get(2), "reading")).isCloseTo(123.8, TENTH);
        assertThat(bottle(run).get("delivered_litres").asDouble()).isCloseTo(1108.0, WHOLE);
        assertThat(notes(run)).anyMatch(note -> note.contains("in the place of P "));
    }

    @Test
    void waveCampAfterTheExchangeIsRankedAnewAndHasFiveFills() {
        CommandRun run = CommandRun.planned("plans/wave-camp-exchanged.yaml");
        assertThat(run.exit()).isEqualTo(0);
        JsonNode bank = run.json().get("supplies");
        assertThat(names(bank, "name")).containsExactly("Q", "R", "P2");
        assertThat(bank.get(2).get("rank").asInt()).isEqualTo(3);
        assertThat(bar(bank.get(0), "reading")).isCloseTo(84.5, TENTH);
        assertThat(bar(bank.get(1), "reading")).isCloseTo(123.2, TENTH);
        assertThat(bar(bank.get(2), "reading")).isCloseTo(194.3, TENTH);
        assertThat(bottle(run).get("fills_left").get("complete").asInt()).isEqualTo(5);
        assertThat(bar(bottle(run).get("fills_left"), "next_stops_at")).isCloseTo(143.3, TENTH);
    }

    private static JsonNode bottle(CommandRun run) {
        return run.json().get("bottles").get(0);
    }

    private static double psi(JsonNode node, String key) {
        return node.get(key).get("psi").asDouble();
    }

    private static double bar(JsonNode node, String key) {
        return node.get(key).get("bar").asDouble();
    }

    private static List<String> endings(JsonNode steps) {
        return names(steps, "ends");
    }

    private static List<String> names(JsonNode list, String key) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(node -> node.get(key).asString())
                .toList();
    }

    private static List<String> notes(CommandRun run) {
        return StreamSupport.stream(run.json().get("notes").spliterator(), false)
                .map(JsonNode::asString)
                .toList();
    }
}

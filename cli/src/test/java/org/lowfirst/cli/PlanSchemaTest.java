package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of plan fits the published schema, and the schema refuses what is not a plan. */
final class PlanSchemaTest {

    private static final Path SCHEMA = Path.of("../docs/schema/plan-result.schema.json");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plans/bank-of-three.yaml",
                "plans/cannot-reach.yaml",
                "plans/single-supply.yaml",
                "plans/wave-camp-exchanged.yaml",
                "plans/nothing-above-the-bottle.yaml",
                "plans/full-already.yaml",
                "plans/cold-bench.yaml"
            })
    void everyPlanFits(String file) throws IOException {
        assertThat(faults(CommandRun.planned(file).out())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan-us.yaml", "plan-eu.yaml", "cannot-reach.yaml"})
    void everyExampleFits(String file) throws IOException {
        assertThat(faults(CommandRun.of("plan", "../examples/" + file, "--json").out()))
                .isEmpty();
    }

    @Test
    void aFurtherKeyDoesNotFit() throws IOException {
        String plan = CommandRun.planned("plans/bank-of-three.yaml").out();
        assertThat(faults(plan.replace("\"notes\":", "\"remarks\":[],\"notes\":")))
                .isNotEmpty();
        assertThat(faults(plan.replace("\"ends\":\"target\"", "\"ends\":\"full\"")))
                .isNotEmpty();
        assertThat(faults(plan.replace("\"reaches_all\":true,", ""))).isNotEmpty();
    }

    private static List<Error> faults(String json) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA), InputFormat.JSON);
        return schema.validate(json, InputFormat.JSON);
    }
}

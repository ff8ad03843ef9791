package org.lowfirst.cli;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A schema of docs/schema. */
record PublishedSchema(Schema schema) {

    static PublishedSchema of(String name) throws IOException {
        String text = Files.readString(Path.of("../docs/schema").resolve(name));
        return new PublishedSchema(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON));
    }

    /** What does not fit. */
    List<Error> faults(String json) {
        return schema.validate(json, InputFormat.JSON);
    }
}

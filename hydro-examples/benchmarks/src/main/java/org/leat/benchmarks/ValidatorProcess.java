package org.leat.benchmarks;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The peer of a cold check: a process of a general JSON Schema validator that validates one design file. */
public final class ValidatorProcess {

    private ValidatorProcess() {}

    /** {@return the design file's schema, ready to validate with} */
    static Schema schema(Path file) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(file), InputFormat.JSON);
    }

    /** Validates the second file with the schema of the first; prints how many faults it has. */
    public static void main(String[] args) throws IOException {
        int faults = schema(Path.of(args[0]))
                .validate(Files.readString(Path.of(args[1])), InputFormat.YAML)
                .size();
        System.out.println(faults + " faults");
        System.exit(faults == 0 ? 0 : 1);
    }
}

package org.toeline.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.util.Comparator;
import java.util.Optional;

/** What a document must be: a JSON Schema (2020-12) that comes with the program, beside a class. Any thread. */
public final class DocumentSchema {

    private static final int LONGEST = 300;

    private final JsonNode schema;
    private final SureCheck check;
    private Optional<JsonSchema> validator = Optional.empty();

    private DocumentSchema(JsonNode schema) {
        this.schema = schema;
        this.check = new SureCheck(schema);
    }

    public static DocumentSchema shipped(Class<?> beside, String name) {
        return new DocumentSchema(Json.shipped(beside, name));
    }

    /** What is wrong with a document, such as “views[0].marks[3].x: string found, number expected”; the first by place. */
    public Optional<String> fault(JsonNode document) {
        if (check.passes(document)) {
            return Optional.empty();
        }
        return validator().validate(document).stream()
                .min(Comparator.comparing(
                        (ValidationMessage m) -> m.getInstanceLocation().toString()))
                .map(DocumentSchema::clause);
    }

    private synchronized JsonSchema validator() {
        JsonSchema made = validator.orElseGet(() ->
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema));
        validator = Optional.of(made);
        return made;
    }

    private static String clause(ValidationMessage fault) {
        String message = fault.getMessage().lines().findFirst().orElse("").strip();
        String shorter = message.length() > LONGEST ? message.substring(0, LONGEST) + " …" : message;
        return shorter.startsWith("$.")
                ? shorter.substring(2)
                : shorter.startsWith("$: ") ? shorter.substring(3) : shorter;
    }
}

package org.toeline.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether a document surely is what a schema asks for, by the part of JSON Schema (2020-12) that the program's own schemas use.
 * “No” means only that it is not certain: whoever asks has the whole validator look then, which also finds the words. It spares
 * the validator, a tenth of a second of a command, where nothing is wrong.
 */
final class SureCheck {

    private final JsonNode root;

    SureCheck(JsonNode schema) {
        this.root = schema;
    }

    boolean passes(JsonNode document) {
        return passes(root, document);
    }

    private boolean passes(JsonNode schema, JsonNode value) {
        if (!schema.isObject()) {
            return schema.isBoolean() && schema.booleanValue();
        }
        for (Map.Entry<String, JsonNode> rule : schema.properties()) {
            if (!passes(rule.getKey(), rule.getValue(), schema, value)) {
                return false;
            }
        }
        return true;
    }

    private boolean passes(String keyword, JsonNode rule, JsonNode schema, JsonNode value) {
        return switch (keyword) {
            case "$schema", "$id", "$defs", "$comment", "title", "description", "default" -> true;
            case "$ref" ->
                rule.textValue().startsWith("#/")
                        && passes(root.at(rule.textValue().substring(1)), value);
            case "type" -> rule.isTextual() && isOf(rule.textValue(), value);
            case "const" -> rule.equals(value);
            case "enum" -> has(rule, value);
            case "minimum" -> !value.isNumber() || value.doubleValue() >= rule.doubleValue();
            case "maximum" -> !value.isNumber() || value.doubleValue() <= rule.doubleValue();
            case "exclusiveMinimum" -> !value.isNumber() || value.doubleValue() > rule.doubleValue();
            case "minLength" -> !value.isTextual() || length(value) >= rule.intValue();
            case "maxLength" -> !value.isTextual() || length(value) <= rule.intValue();
            case "pattern" ->
                !value.isTextual()
                        || Pattern.compile(rule.textValue())
                                .matcher(value.textValue())
                                .find();
            case "items" -> !value.isArray() || all(rule, value);
            case "minItems" -> !value.isArray() || value.size() >= rule.intValue();
            case "maxItems" -> !value.isArray() || value.size() <= rule.intValue();
            case "uniqueItems" -> !value.isArray() || areTextsApart(value);
            case "properties" -> ofThatName(rule, value);
            case "additionalProperties" -> others(rule, Optional.ofNullable(schema.get("properties")), value);
            case "required" -> !value.isObject() || hasAll(rule, value);
            default -> false;
        };
    }

    /** A number such as 1.0, which is an integer to JSON Schema, is left to the validator. */
    private static boolean isOf(String type, JsonNode value) {
        return switch (type) {
            case "object" -> value.isObject();
            case "array" -> value.isArray();
            case "string" -> value.isTextual();
            case "number" -> value.isNumber();
            case "integer" -> value.isIntegralNumber();
            case "boolean" -> value.isBoolean();
            case "null" -> value.isNull();
            default -> false;
        };
    }

    private static boolean has(JsonNode values, JsonNode value) {
        for (JsonNode one : values) {
            if (one.equals(value)) {
                return true;
            }
        }
        return false;
    }

    /** In characters as Unicode counts them. */
    private static int length(JsonNode text) {
        return text.textValue().codePointCount(0, text.textValue().length());
    }

    private boolean all(JsonNode schema, JsonNode values) {
        for (JsonNode value : values) {
            if (!passes(schema, value)) {
                return false;
            }
        }
        return true;
    }

    /** Numbers may be the same in several ways to write them. */
    private static boolean areTextsApart(JsonNode values) {
        Set<String> texts = new HashSet<>();
        for (JsonNode value : values) {
            if (!value.isTextual() || !texts.add(value.textValue())) {
                return false;
            }
        }
        return true;
    }

    private boolean ofThatName(JsonNode schemas, JsonNode value) {
        for (Map.Entry<String, JsonNode> field : value.properties()) {
            JsonNode schema = schemas.get(field.getKey());
            if (schema != null && !passes(schema, field.getValue())) {
                return false;
            }
        }
        return true;
    }

    private boolean others(JsonNode schema, Optional<JsonNode> named, JsonNode value) {
        for (Map.Entry<String, JsonNode> field : value.properties()) {
            boolean isNamed = named.isPresent() && named.get().has(field.getKey());
            if (!isNamed && !passes(schema, field.getValue())) {
                return false;
            }
        }
        return true;
    }

    private static boolean hasAll(JsonNode names, JsonNode value) {
        for (JsonNode name : names) {
            if (!value.has(name.textValue())) {
                return false;
            }
        }
        return true;
    }
}

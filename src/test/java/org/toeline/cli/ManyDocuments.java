package org.toeline.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.io.file.PathUtils;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;

/**
 * Lesson documents of which something was changed at random, measured in batches with whole ones among them. Whoever reads
 * one alone is asked which are at fault; then exactly those have an error in their place, all others are measured, and the exit
 * status and the sentences are as promised. Argument of the main program: how many.
 */
final class ManyDocuments {

    private static final int BATCH = 25;
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String[] NUMBERS = {
        "1e-9", "4.9e-324", "1e999", "-1", "0", "1e300", "NaN", "1e-320", "99999999999999999999", "-0.0", "0.5"
    };
    private static final String[] TEXTS = {
        "\"\\u0000\"",
        "\"\\u001b[31m\"",
        "\"\\u202e\"",
        "\"../../etc/passwd\"",
        "\"/etc/passwd\"",
        "\"\"",
        "\"x\"",
        "null",
        "true",
        "[]",
        "{}",
        "[[[[]]]]",
        "\"" + "y".repeat(5000) + "\""
    };

    private final Random random;
    private final Path folder;
    private final String whole;

    /** How many of each, and what was not as promised. */
    record Outcome(int documents, int refused, int measured, List<String> wrong) {}

    private ManyDocuments(long seed, Path folder) throws Exception {
        this.random = new Random(seed);
        this.folder = folder;
        this.whole = Files.readString(Path.of("sample-media/before/before.lesson.json"));
    }

    static Outcome run(int documents, long seed, Path folder) throws Exception {
        ManyDocuments many = new ManyDocuments(seed, folder);
        int refused = 0;
        int measured = 0;
        List<String> wrong = new ArrayList<>();
        for (int done = 0; done < documents; done += BATCH) {
            List<Path> files = new ArrayList<>();
            List<Boolean> bad = new ArrayList<>();
            for (int i = 0; i < Math.min(BATCH, documents - done); i++) {
                Path file = Files.write(folder.resolve("d" + (done + i) + ".lesson.json"), many.mutated());
                files.add(file);
                bad.add(isRefused(file));
            }
            many.measure(files, bad, wrong);
            for (boolean b : bad) {
                refused += b ? 1 : 0;
                measured += b ? 0 : 1;
            }
            for (Path file : files) {
                Files.delete(file);
            }
        }
        return new Outcome(documents, refused, measured, wrong);
    }

    private static boolean isRefused(Path file) {
        try {
            LessonDocument.read(file);
            return false;
        } catch (DocumentException e) {
            return true;
        }
    }

    private void measure(List<Path> files, List<Boolean> bad, List<String> wrong) throws Exception {
        List<String> args = new ArrayList<>(List.of("measure", "--json"));
        files.forEach(f -> args.add(f.toString()));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Commands.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
        int expected = bad.contains(true) ? 2 : 0;
        if (status != expected) {
            wrong.add(files.get(0) + " and on: exit status " + status + ", not " + expected + ": " + err);
        }
        String[] lines = out.toString().split("\n");
        if (lines.length != files.size()) {
            wrong.add(files.get(0) + " and on: " + lines.length + " answers for " + files.size() + " documents");
            return;
        }
        for (int i = 0; i < lines.length; i++) {
            JsonNode answer = JSON.readTree(lines[i]);
            if (answer.has("error") != bad.get(i)) {
                wrong.add(files.get(i) + (bad.get(i) ? " was measured: " : " was not measured: ") + lines[i] + " of "
                        + Files.readString(files.get(i), StandardCharsets.ISO_8859_1));
            } else if (bad.get(i)
                    && !answer.path("error")
                            .asText()
                            .contains(files.get(i).getFileName().toString())) {
                wrong.add("an error names no file: " + lines[i]);
            }
        }
        if (err.toString().chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
            wrong.add("something acts on a terminal: " + err);
        }
    }

    private byte[] mutated() throws Exception {
        return switch (random.nextInt(8)) {
            case 0 -> whole.getBytes(StandardCharsets.UTF_8);
            case 1 -> byteChanged();
            case 2 -> whole.substring(0, random.nextInt(whole.length())).getBytes(StandardCharsets.UTF_8);
            case 3 -> whole.getBytes(random.nextBoolean() ? StandardCharsets.UTF_16 : StandardCharsets.UTF_16LE);
            case 4 -> (whole + (random.nextBoolean() ? "{}" : " x")).getBytes(StandardCharsets.UTF_8);
            default -> valueChanged().getBytes(StandardCharsets.UTF_8);
        };
    }

    private byte[] byteChanged() {
        byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i <= random.nextInt(3); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** One value somewhere in the tree is another, is gone, or is there twice. */
    private String valueChanged() throws Exception {
        ObjectNode tree = (ObjectNode) JSON.readTree(whole);
        tree.put("clickSd", 2);
        List<Runnable> changes = new ArrayList<>();
        String marker = "\"§§§\"";
        collect(tree, changes);
        changes.get(random.nextInt(changes.size())).run();
        String value =
                random.nextBoolean() ? NUMBERS[random.nextInt(NUMBERS.length)] : TEXTS[random.nextInt(TEXTS.length)];
        return tree.toString().replace(marker, value);
    }

    private void collect(JsonNode node, List<Runnable> changes) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(key -> {
                changes.add(() -> object.put(key, "§§§"));
                if (random.nextInt(6) == 0) {
                    changes.add(() -> object.remove(key));
                }
                collect(object.get(key), changes);
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                int at = i;
                changes.add(() -> array.set(at, "§§§"));
                changes.add(() -> array.add(array.get(at).deepCopy()));
                collect(array.get(i), changes);
            }
        }
    }

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("many-documents");
        Outcome outcome = run(Integer.parseInt(args[0]), 7, folder);
        outcome.wrong.forEach(System.out::println);
        System.out.printf(
                "%d documents: %d refused, %d measured, %d not as promised%n",
                outcome.documents, outcome.refused, outcome.measured, outcome.wrong.size());
        PathUtils.deleteDirectory(folder);
    }
}

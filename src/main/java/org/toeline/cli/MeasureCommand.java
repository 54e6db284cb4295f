package org.toeline.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Gate;
import org.toeline.advice.Mend;
import org.toeline.advice.Slip;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks → readings → findings, for one lesson or many; answers come in the order of the documents. */
@Command(name = "measure", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class MeasureCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(MeasureCommand.class);

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "LESSON.json")
    private List<Path> lessons = new ArrayList<>();

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--mend", paramLabel = "SLIP")
    private @Nullable String mend;

    @Option(names = "--save", paramLabel = "FILE")
    private @Nullable Path save;

    /** An assessment, or the sentence that says why there is none. */
    private record Answer(@Nullable Assessment assessment, String fault) {}

    @Override
    public Integer call() throws InterruptedException, ExecutionException {
        Optional<Slip> slip = slip();
        ExecutorService threads = Executors.newFixedThreadPool(
                Math.max(1, Math.min(lessons.size(), Runtime.getRuntime().availableProcessors())));
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            lessons.forEach(lesson -> answers.add(threads.submit(() -> answer(lesson, slip))));
            int status = Commands.DONE;
            for (int i = 0; i < answers.size(); i++) {
                Answer answer = answers.get(i).get();
                if (answer.assessment == null) {
                    status = Commands.AT_FAULT;
                }
                print(lessons.get(i), answer);
            }
            return status;
        } finally {
            threads.shutdownNow();
        }
    }

    private Optional<Slip> slip() {
        if (mend == null) {
            if (save != null) {
                throw new ParameterException(spec.commandLine(), SENTENCES.of("measure.save-alone"));
            }
            return Optional.empty();
        }
        if (save != null && lessons.size() > 1) {
            throw new ParameterException(spec.commandLine(), SENTENCES.of("measure.save-many"));
        }
        return Optional.of(Slip.of(mend)
                .filter(s -> s != Slip.UNKNOWN)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        SENTENCES.of(
                                "measure.mend",
                                String.valueOf(mend),
                                Arrays.stream(Slip.values())
                                        .filter(s -> s != Slip.UNKNOWN)
                                        .map(Slip::id)
                                        .collect(Collectors.joining(", "))))));
    }

    private Answer answer(Path file, Optional<Slip> slip) {
        try {
            Lesson lesson = LessonDocument.read(file);
            if (slip.isPresent()) {
                Mend mended = Gate.best(lesson.sheet(), slip.get())
                        .orElseThrow(() -> new DocumentException(SENTENCES.of(
                                "measure.not-mended", file, slip.get().id())));
                lesson = slip.get() == Slip.VIEWS_EXCHANGED
                        ? lesson.withViewsExchanged(mended.sheet())
                        : lesson.withSheet(mended.sheet());
                if (save != null) {
                    if (slip.get() == Slip.MIRRORED) {
                        throw new DocumentException(SENTENCES.of("measure.mirrored", file));
                    }
                    LessonDocument.write(lesson, save);
                }
            }
            return new Answer(Assessment.of(lesson.sheet()), "");

        } catch (DocumentException e) {
            return new Answer(null, e.getMessage());
        }
    }

    private void print(Path lesson, Answer answer) {
        PrintWriter out = spec.commandLine().getOut();
        if (answer.assessment == null) {
            spec.commandLine().getErr().println(answer.fault);
            if (json && lessons.size() > 1) {
                ObjectNode error = JsonNodeFactory.instance.objectNode().put("error", answer.fault);
                out.println(error);
            }
        } else if (json) {
            out.println(ReadingsDocument.of(answer.assessment));
        } else {
            if (lessons.size() > 1) {
                out.println(lesson);
            }
            FindingsTable.print(answer.assessment, out);
        }
    }
}

package org.toeline.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.toeline.advice.Assessment;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks → readings → findings, for one lesson or many; answers come in the order of the documents. */
@Command(name = "measure", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class MeasureCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "LESSON.json")
    private List<Path> lessons = new ArrayList<>();

    @Option(names = "--json")
    private boolean json;

    /** An assessment, or the sentence that says why there is none. */
    private record Answer(@org.jspecify.annotations.Nullable Assessment assessment, String fault) {}

    @Override
    public Integer call() throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(
                Math.max(1, Math.min(lessons.size(), Runtime.getRuntime().availableProcessors())));
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            lessons.forEach(lesson -> answers.add(threads.submit(() -> answer(lesson))));
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

    private static Answer answer(Path lesson) {
        try {
            return new Answer(Assessment.of(LessonDocument.read(lesson).sheet()), "");
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

package org.toeline.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.document.WholeFile;
import org.toeline.handout.Handout;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The main job on the sample lessons. */
@Command(name = "sample", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class SampleCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "toeline-sample")
    private Path out;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        PrintWriter print = spec.commandLine().getOut();
        Map<String, Assessment> done = new LinkedHashMap<>();
        for (String id : List.of("before", "after", "left-handed", "all-good")) {
            Path lesson = home().resolve("sample-media").resolve(id).resolve(id + ".lesson.json");
            Handout handout = handout(lesson);
            Path still = out.resolve(id + "-still.png");
            WholeFile.write(still, handout.png());
            done.put(id, handout.assessment());
            print.println("== " + id);
            FindingsTable.print(handout.assessment(), print);
            print.println(Sentences.of(SampleCommand.class).of("sample.still", still));
            print.println();
        }
        print.println(Sentences.of(SampleCommand.class).of("sample.change"));
        Changes.between(
                        Objects.requireNonNull(done.get("before")),
                        Objects.requireNonNull(done.get("after")),
                        List.of())
                .print(print);
        return Commands.DONE;
    }

    private static Handout handout(Path document) throws DocumentException, ClipException {
        Lesson lesson = LessonDocument.read(document);
        return Handout.of(lesson, Assessment.of(lesson.sheet()), LessonPictures.of(lesson, document), Words.usual());
    }

    /** The folder of the program, which the launcher states. */
    private static Path home() {
        Path stated =
                Path.of(Optional.ofNullable(System.getProperty("toeline.home")).orElse("."));
        return Files.isDirectory(stated) ? stated : Path.of(".");
    }
}

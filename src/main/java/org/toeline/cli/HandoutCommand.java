package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.toeline.handout.Handout;
import org.toeline.ledger.DocumentException;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Everything the player takes home. */
@Command(name = "handout", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class HandoutCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private HandoutChoices choices;

    @Parameters(paramLabel = "LESSON.json")
    private Path lesson;

    @Option(names = "--out", required = true, paramLabel = "DIR")
    private Path out;

    @Option(names = "--before", paramLabel = "EARLIER.json")
    private @Nullable Path before;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        Handout handout = StillCommand.handout(lesson, choices);
        Optional<String> lacks = handout.lacksAdvice();
        if (lacks.isPresent()) {
            throw new DocumentException(lesson + ": " + lacks.get());
        }
        String stem = choices.stem(out, handout.stem());
        Map<String, byte[]> files = before == null
                ? handout.files(stem, choices.paper())
                : StillCommand.both(before, lesson, handout, choices).files(stem, choices.paper());
        OutFiles.write(out, files).forEach(spec.commandLine().getOut()::println);
        return Commands.DONE;
    }
}

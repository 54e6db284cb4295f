package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.toeline.document.WholeFile;
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

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        Handout handout = StillCommand.handout(lesson, choices);
        Optional<String> lacks = handout.lacksAdvice();
        if (lacks.isPresent()) {
            throw new DocumentException(lesson + ": " + lacks.get());
        }
        Map<String, byte[]> files = new TreeMap<>(handout.files(choices.paper()));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            WholeFile.write(out.resolve(file.getKey()), file.getValue());
            spec.commandLine().getOut().println(out.resolve(file.getKey()));
        }
        return Commands.DONE;
    }
}

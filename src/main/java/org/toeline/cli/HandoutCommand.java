package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.toeline.handout.Handout;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.WholeFile;
import org.toeline.video.ClipException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Everything the player takes home. */
@Command(name = "handout", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class,
        description = "Writes still.png, page.pdf and page.html of a lesson.")
final class HandoutCommand implements Callable<Integer> {

    @Parameters(paramLabel = "LESSON.json", description = "A lesson document.")
    private Path lesson;
    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder they go into.")
    private Path out;

    @Override
    public Integer call() throws DocumentException, ClipException, IOException {
        Handout handout = StillCommand.handout(lesson);
        byte[] png = handout.png();
        byte[] pdf = handout.pdf(org.toeline.handout.Paper.A4);
        byte[] html = handout.html();
        WholeFile.write(out.resolve("still.png"), png);
        WholeFile.write(out.resolve("page.pdf"), pdf);
        WholeFile.write(out.resolve("page.html"), html);
        return Commands.DONE;
    }
}

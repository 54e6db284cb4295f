package org.toeline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Contradiction;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Words;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changed between two lessons of a player. */
@Command(name = "changes", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class ChangesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "EARLIER.json")
    private Path earlier;

    @Parameters(index = "1", paramLabel = "LATER.json")
    private Path later;

    @Option(names = "--repeats", paramLabel = "LESSON.json,LESSON.json,…")
    private List<String> repeats = new ArrayList<>();

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws DocumentException {
        Assessment first = assess(earlier);
        Assessment second = assess(later);
        if (first.sheet().handedness() != second.sheet().handedness()) {
            throw new DocumentException(Sentences.of(ChangesCommand.class)
                    .of(
                            "changes.hands",
                            later,
                            second.sheet().handedness().id(),
                            earlier,
                            first.sheet().handedness().id()));
        }
        List<List<Assessment>> groups = new ArrayList<>();
        for (String group : repeats) {
            List<Assessment> addresses = new ArrayList<>();
            for (String lesson : group.split(",")) {
                addresses.add(assess(Path.of(lesson)));
            }
            groups.add(addresses);
        }
        Changes changes = Changes.between(first, second, groups);
        if (json) {
            spec.commandLine().getOut().println(changes.json());
        } else {
            changes.print(spec.commandLine().getOut());
        }
        if (first.sheet().club() != second.sheet().club()) {
            spec.commandLine()
                    .getErr()
                    .println(Sentences.of(ChangesCommand.class)
                            .of(
                                    "changes.clubs",
                                    first.sheet().club().id(),
                                    second.sheet().club().id()));
        }
        return Commands.DONE;
    }

    private static Assessment assess(Path lesson) throws DocumentException {
        Assessment assessment = Assessment.of(LessonDocument.read(lesson).sheet());
        Optional<Contradiction> withheld = assessment.advice().withheld();
        if (withheld.isPresent()) {
            Words words = Words.usual();
            throw new DocumentException(lesson + ": "
                    + words.text("withheld.uncompared", new ContradictionWords(words).sentence(withheld.get())));
        }
        return assessment;
    }
}

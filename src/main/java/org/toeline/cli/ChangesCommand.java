package org.toeline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.advice.Assessment;
import org.toeline.advice.Contradiction;
import org.toeline.advice.Words;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changed between two lessons of a player. */
@Command(
        name = "changes",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description =
                "Says which readings changed from one lesson to a later one, and which changes are no larger than "
                        + "measuring the same twice would give.")
final class ChangesCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "EARLIER.json", description = "The earlier lesson.")
    private Path earlier;

    @Parameters(index = "1", paramLabel = "LATER.json", description = "The later lesson.")
    private Path later;

    @Option(
            names = "--repeats",
            paramLabel = "LESSON.json,LESSON.json,…",
            description = "Lessons in which the player "
                    + "addressed the ball again in one setup, joined by commas; how much the player varies is learnt from them. May be "
                    + "given several times, once a setup; four addresses in all are the least.")
    private List<String> repeats = new ArrayList<>();

    @Option(names = "--json", description = "One JSON object on standard output.")
    private boolean json;

    @Override
    public Integer call() throws DocumentException {
        Assessment first = assess(earlier);
        Assessment second = assess(later);
        if (first.sheet().handedness() != second.sheet().handedness()) {
            throw new DocumentException(
                    later + ": the player is " + second.sheet().handedness().id() + "-handed, but in " + earlier + " "
                            + first.sheet().handedness().id() + "-handed; two lessons of one player are needed");
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
                    .println("the clubs differ (" + first.sheet().club().id() + ", then "
                            + second.sheet().club().id() + "): a change may be the club's");
        }
        return Commands.DONE;
    }

    private static Assessment assess(Path lesson) throws DocumentException {
        Assessment assessment = Assessment.of(LessonDocument.read(lesson).sheet());
        Optional<Contradiction> withheld = assessment.advice().withheld();
        if (withheld.isPresent()) {
            Words words = Words.english();
            throw new DocumentException(
                    lesson + ": " + words.text("withheld.uncompared", words.contradiction(withheld.get())));
        }
        return assessment;
    }
}

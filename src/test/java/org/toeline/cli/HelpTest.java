package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.language.Language;
import picocli.CommandLine;

class HelpTest {

    private final Locale before = Language.now();

    @AfterEach
    void back() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    private static String said(String... args) {
        StringWriter out = new StringWriter();
        assertThat(Commands.run(args, new PrintWriter(out), new PrintWriter(out)))
                .isZero();
        return out.toString();
    }

    /** A key of the bundle that names no option would go unread, and an option without one unexplained. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyOptionOfEveryCommandIsExplained(String tag) {
        Language.choose(Locale.forLanguageTag(tag));
        for (String command :
                List.of("sample", "measure", "clip", "frame", "address", "still", "handout", "lens", "changes")) {
            CommandLine line = new CommandLine(new Commands())
                    .setResourceBundle(org.toeline.language.Sentences.in("org.toeline.cli.help")
                            .bundle())
                    .getSubcommands()
                    .get(command);
            assertThat(line.getCommandSpec().usageMessage().description())
                    .as(command)
                    .isNotEmpty();
            line.getCommandSpec()
                    .args()
                    .forEach(arg -> assertThat(arg.description())
                            .as(command + " " + arg.paramLabel())
                            .isNotEmpty()
                            .allMatch(d -> !d.isBlank()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void helpSpeaksThePersonsLanguage(String tag) {
        Language.choose(Locale.forLanguageTag(tag));
        assertThat(said("measure", "--help"))
                .contains(tag.equals("de") ? "Liest Dokumente von Stunden" : "Reads lesson documents");
    }
}

package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.language.Language;
import org.toeline.language.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

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

    private static CommandLine speaking() {
        return CommandTree.line();
    }

    /** All commands, and all of theirs. */
    private static List<CommandLine> all(CommandLine line) {
        List<CommandLine> found = new ArrayList<>(List.of(line));
        line.getSubcommands().values().forEach(under -> found.addAll(all(under)));
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyOptionOfEveryCommandIsExplained(String tag) {
        Language.choose(Locale.forLanguageTag(tag));
        List<CommandLine> all = all(speaking());
        assertThat(all).hasSizeGreaterThan(20);
        for (CommandLine line : all) {
            String command = line.getCommandSpec().qualifiedName();
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

    /** A key that names no command and no option would never be said. */
    @Test
    void everyKeyExplainsSomething() {
        Set<String> explained = new HashSet<>(Set.of("usage.synopsisHeading", "usage.commandListHeading"));
        for (CommandLine line : all(speaking())) {
            String command = line.getCommandSpec().qualifiedName(".") + ".";
            explained.add(command + "usage.description");
            for (ArgSpec arg : line.getCommandSpec().args()) {
                String name = arg instanceof OptionSpec option
                        ? option.longestName().replaceFirst("^-+", "")
                        : arg.paramLabel() + "[" + ((PositionalParamSpec) arg).index() + "]";
                explained.add(name);
                explained.add(command + name);
            }
        }
        assertThat(Sentences.in("org.toeline.cli.help").bundle().keySet()).allMatch(explained::contains);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void helpSpeaksThePersonsLanguage(String tag) {
        Language.choose(Locale.forLanguageTag(tag));
        assertThat(said("measure", "--help"))
                .contains(tag.equals("de") ? "Liest Dokumente von Stunden" : "Reads lesson documents");
    }

    /** A command that is asked for alone explains itself in the same words, and none is known by another name than its own. */
    @Test
    void theOneThatIsAskedForIsTheSame() {
        for (CommandLine line : all(speaking())) {
            String[] words = line.getCommandSpec().qualifiedName(" ").split(" ");
            String[] asked = Arrays.copyOfRange(words, 1, words.length);
            CommandLine alone = CommandTree.line(asked);
            for (String word : asked) {
                alone = alone.getSubcommands().get(word);
            }
            assertThat(alone.getUsageMessage())
                    .as(line.getCommandSpec().qualifiedName())
                    .isEqualTo(line.getUsageMessage());
            assertThat(alone.getCommandSpec().qualifiedName()).isEqualTo(String.join(" ", words));
        }
    }

    @Test
    void onlyTheOneThatIsAskedForIsMade() {
        assertThat(CommandTree.line("measure", "x.json").getSubcommands()).containsOnlyKeys("measure");
        assertThat(CommandTree.line("ledger", "find")
                        .getSubcommands()
                        .get("ledger")
                        .getSubcommands())
                .containsOnlyKeys("find");
        assertThat(CommandTree.line("--version").getSubcommands()).isEmpty();
        assertThat(CommandTree.line("measures").getSubcommands()).hasSizeGreaterThan(10);
    }
}

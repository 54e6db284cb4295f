package org.toeline.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.toeline.language.Sentences;
import picocli.CommandLine;

/**
 * The commands by name, in the order they are listed. Only the one that is asked for is described to the library of commands:
 * describing all takes as long as measuring a lesson. Where none is named (help, a slip of the hand), all are there.
 */
final class CommandTree {

    private CommandTree() {}

    private static Map<String, Class<?>> first() {
        Map<String, Class<?>> commands = new LinkedHashMap<>();
        commands.put("sample", SampleCommand.class);
        commands.put("measure", MeasureCommand.class);
        commands.put("clip", ClipCommand.class);
        commands.put("frame", FrameCommand.class);
        commands.put("address", AddressCommand.class);
        commands.put("still", StillCommand.class);
        commands.put("handout", HandoutCommand.class);
        commands.put("lens", LensCommand.class);
        commands.put("changes", ChangesCommand.class);
        commands.put("ledger", LedgerCommand.class);
        commands.put("shots", ShotsCommand.class);
        return commands;
    }

    private static Map<String, Class<?>> ofLedger() {
        Map<String, Class<?>> commands = new LinkedHashMap<>();
        commands.put("import", LedgerImportCommand.class);
        commands.put("export", LedgerExportCommand.class);
        commands.put("find", LedgerFindCommand.class);
        commands.put("across", LedgerAcrossCommand.class);
        commands.put("backup", LedgerBackupCommand.class);
        commands.put("restore", LedgerRestoreCommand.class);
        commands.put("check", LedgerCheckCommand.class);
        commands.put("merge", LedgerMergeCommand.class);
        commands.put("delete", LedgerDeleteCommand.class);
        commands.put("handouts", LedgerHandoutsCommand.class);
        return commands;
    }

    /** What understands these words, in the person's language. */
    static CommandLine line(String... words) {
        CommandLine line = new CommandLine(new Commands());
        add(line, first(), words, 0);
        CommandLine ledger = line.getSubcommands().get("ledger");
        if (ledger != null) {
            add(ledger, ofLedger(), words, 1);
        }
        return line.setResourceBundle(Sentences.in("org.toeline.cli.help").bundle());
    }

    private static void add(CommandLine line, Map<String, Class<?>> commands, String[] words, int place) {
        String word = place < words.length ? words[place] : "";
        Class<?> asked = commands.get(word);
        if (asked != null) {
            line.addSubcommand(word, asked);
        } else if (!word.equals("--version") && !word.equals("-V")) {
            commands.forEach(line::addSubcommand);
        }
    }
}

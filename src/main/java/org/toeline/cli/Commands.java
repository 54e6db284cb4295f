package org.toeline.cli;

import java.io.PrintWriter;
import java.nio.file.NoSuchFileException;
import java.util.Optional;
import java.util.stream.Collectors;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.video.ClipException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: {@code toeline COMMAND …}. */
@Command(name = "toeline", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
public final class Commands implements Runnable {

    static final int DONE = 0;
    static final int FAILED = 1;
    static final int AT_FAULT = 2;
    static final int CLIP_UNREADABLE = 3;

    @Spec
    private @org.jspecify.annotations.Nullable CommandSpec spec;

    /** Runs a command and returns the exit status. */
    public static int run(String[] args, PrintWriter given, PrintWriter givenErr) {
        PrintWriter out = new PrintWriter(new PlainWriter(given));
        PrintWriter err = new PrintWriter(new PlainWriter(givenErr));
        CommandLine line = CommandTree.line(args);
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler((e, rest) -> {
            e.getCommandLine().getErr().println(Sentences.of(Commands.class).of("error.help", firstLine(said(e))));
            e.getCommandLine().getErr().flush();
            return AT_FAULT;
        });
        line.setExecutionExceptionHandler((e, where, parsed) -> {
            where.getErr().println(sentence(e));
            where.getErr().flush();
            return status(e);
        });
        int status = executed(line, args);
        out.flush();
        err.flush();
        return status;
    }

    /** A bare system may lack what Java draws letters with; that is found out where the first letter is drawn. */
    private static int executed(CommandLine line, String[] args) {
        try {
            return line.execute(args);
        } catch (LinkageError | InternalError e) {
            line.getErr().println(lacking(e));
            return FAILED;
        }
    }

    /** What the library of commands found, in the person's language; what a command found is said already. */
    private static String said(ParameterException e) {
        Sentences sentences = Sentences.of(Commands.class);
        if (e instanceof UnmatchedArgumentException unmatched) {
            return sentences.of("error.unmatched", String.join(" ", unmatched.getUnmatched()));
        }
        if (e instanceof MutuallyExclusiveArgsException) {
            return sentences.of("error.exclusive");
        }
        if (e instanceof MissingParameterException missing) {
            return sentences.of(
                    "error.missing",
                    missing.getMissing().stream().map(Commands::name).collect(Collectors.joining(", ")));
        }
        return e.getArgSpec() != null && e.getValue() != null
                ? sentences.of("error.value", name(e.getArgSpec()), e.getValue())
                : String.valueOf(e.getMessage());
    }

    private static String name(ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    static String lacking(Throwable e) {
        Throwable first = e;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        return Sentences.of(Commands.class).of("error.system-lacks", firstLine(String.valueOf(first.getMessage())));
    }

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                new CommandLine(this), Sentences.of(Commands.class).of("error.say"));
    }

    private static int status(Exception e) {
        if (e instanceof DocumentException || e instanceof LedgerException ledger && ledger.fault() == Fault.UNKNOWN) {
            return AT_FAULT;
        }
        return e instanceof ClipException ? CLIP_UNREADABLE : FAILED;
    }

    static String sentence(Exception e) {
        String message =
                Optional.ofNullable(e.getMessage()).map(Commands::firstLine).orElse("");
        if (e instanceof DocumentException || e instanceof ClipException || e instanceof LedgerException) {
            return message;
        }
        if (e instanceof NoSuchFileException) {
            return Sentences.of(Commands.class).of("error.no-file", message);
        }
        return Sentences.of(Commands.class).of("error.failed", e.getClass().getSimpleName(), message);
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("").strip();
    }

    /** The version the build wrote into the archive. */
    static final class Version implements CommandLine.IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {"toeline " + org.toeline.language.Version.words()};
        }
    }
}

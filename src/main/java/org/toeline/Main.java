package org.toeline;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.toeline.cli.Commands;
import org.toeline.language.Sentences;

/** Where the program starts: a command when there is one, else the desk, with a lesson's file when one is named, else, without a screen, the sample job. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        sayWhereLogsGo();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        boolean file = namesAFile(args);
        if (args.length > 0 && !(file && hasScreen())) {
            System.exit(Commands.run(args, out, err));
        }
        if (hasScreen()) {
            try {
                DeskStart.launch(args);
                System.exit(0);
            } catch (IllegalStateException e) {
                err.println(e.getMessage());
            }
        }
        if (file) {
            System.exit(1);
        }
        err.println(Sentences.of(Commands.class).of("no-screen"));
        System.exit(Commands.run(new String[] {"sample"}, out, err));
    }

    /** Else the first one to log has every library looked through for a place to log to, a tenth of a second. */
    private static void sayWhereLogsGo() {
        if (System.getProperty("slf4j.provider") == null) {
            System.setProperty("slf4j.provider", "org.slf4j.jul.JULServiceProvider");
            System.setProperty("slf4j.internal.verbosity", "WARN");
        }
    }

    /** A lesson that was double-clicked; no command ends so. */
    private static boolean namesAFile(String[] args) {
        return args.length == 1 && (args[0].endsWith(".json") || args[0].endsWith(".zip"));
    }

    /** On Linux a screen announces itself in the environment; elsewhere there is one. */
    private static boolean hasScreen() {
        boolean linux =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        return !linux || System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
    }

    /** Apart, so that commands do not load the desk. */
    private static final class DeskStart {

        private static void launch(String[] args) {
            org.toeline.desk.DeskLauncher.launch(args);
        }
    }
}

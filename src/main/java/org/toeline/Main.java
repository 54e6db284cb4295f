package org.toeline;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.toeline.cli.Commands;

/** Where the program starts: a command when there is one, else the desk, else, without a screen, the sample job. */
public final class Main {

    private Main() {
    }

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        String[] job = args;
        if (args.length == 0) {
            err.println("no screen here: doing the sample job instead");
            job = new String[] {"sample"};
        }
        System.exit(Commands.run(job, out, err));
    }
}

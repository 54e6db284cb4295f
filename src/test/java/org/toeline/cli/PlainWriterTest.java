package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Controls of ECMA-48 and of the Unicode Bidirectional Algorithm (UAX #9) come out as their numbers. */
class PlainWriterTest {

    @Test
    void whatActsIsToldAndTheRestIsAsItWas() {
        StringWriter out = new StringWriter();
        PrintWriter print = new PrintWriter(new PlainWriter(out));
        print.print("name\u001b[31m \u009b \u202e \u2069 \u0000");
        print.print('\u0007');
        print.print("Grüße, 😀\tso\n");
        print.flush();
        assertThat(out.toString()).isEqualTo("name\\u001b[31m \\u009b \\u202e \\u2069 \\u0000\\u0007Grüße, 😀\tso\n");
    }

    @Test
    void aCommandSaysTheNameOfAFileWithoutItsPower() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Commands.run(
                new String[] {"measure", "no\u001b[2J\u202ewhere.json"}, new PrintWriter(out), new PrintWriter(err));
        assertThat(status).isEqualTo(2);
        assertThat(err.toString()).contains("no\\u001b[2J\\u202ewhere.json").doesNotContain("\u001b");
    }
}

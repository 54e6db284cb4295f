package org.toeline.language;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The string literals of a Java source, each with the calls it stands in; literals joined by a plus are one. Comments and
 * characters are passed over.
 */
final class Literals {

    /**
     * A literal.
     *
     * @param calls names of the methods, constructors and annotations in whose brackets it stands, the outermost first
     */
    record Literal(int line, String text, List<String> calls) {}

    private static final Pattern NAME_BEFORE = Pattern.compile("([\\w.]+)(<[^<>()]*>)?\\s*$");
    private static final Pattern JOINED = Pattern.compile("\\s*\\+\\s*");
    private static final Set<Character> OPEN = Set.of('(', '{', '[');
    private static final Set<Character> CLOSED = Set.of(')', '}', ']');

    private final String source;
    private final List<Literal> found = new ArrayList<>();
    private final Deque<String> calls = new ArrayDeque<>();
    private int at;
    /** Where the literal found last ended. */
    private int ended;

    private Literals(String source) {
        this.source = source;
    }

    static List<Literal> of(String source) {
        Literals all = new Literals(source);
        while (all.at < source.length()) {
            all.step();
        }
        return all.found;
    }

    private void step() {
        char c = source.charAt(at);
        if (source.startsWith("//", at)) {
            at = past("\n", at);
        } else if (source.startsWith("/*", at)) {
            at = past("*/", at + 2);
        } else if (source.startsWith("\"\"\"", at)) {
            int end = past("\"\"\"", at + 3);
            keep(source.substring(at + 3, end - 3));
            at = end;
            ended = at;
        } else if (c == '"' || c == '\'') {
            int end = at + 1;
            while (source.charAt(end) != c) {
                end += source.charAt(end) == '\\' ? 2 : 1;
            }
            if (c == '"') {
                keep(source.substring(at + 1, end));
                ended = end + 1;
            }
            at = end + 1;
        } else {
            if (OPEN.contains(c)) {
                calls.addLast(c == '(' ? nameBefore() : "");
            } else if (CLOSED.contains(c)) {
                calls.pollLast();
            }
            at++;
        }
    }

    private int past(String mark, int from) {
        int end = source.indexOf(mark, from);
        return end < 0 ? source.length() : end + mark.length();
    }

    private String nameBefore() {
        Matcher name = NAME_BEFORE.matcher(source.substring(Math.max(0, at - 80), at));
        return name.find() ? name.group(1).substring(name.group(1).lastIndexOf('.') + 1) : "";
    }

    private void keep(String text) {
        if (!found.isEmpty() && JOINED.matcher(source.substring(ended, at)).matches()) {
            Literal begun = found.remove(found.size() - 1);
            found.add(new Literal(begun.line(), begun.text() + text, begun.calls()));
            return;
        }
        int line = (int) source.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        found.add(new Literal(
                line, text, calls.stream().filter(name -> !name.isEmpty()).toList()));
    }
}

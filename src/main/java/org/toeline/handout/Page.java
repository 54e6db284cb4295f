package org.toeline.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.posture.Source;

/** What the player's page says, section by section; PDF and HTML lay out the same. */
record Page(String title, String coachsWords, List<Section> sections) {

    /** A heading and its paragraphs. */
    record Section(String heading, List<String> paragraphs) {
    }

    static Page of(Assessment assessment, Words words, String title, String coachsWords) {
        List<Section> sections = new ArrayList<>();
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            List<String> text = new ArrayList<>();
            text.add(words.sentence(first.get().finding()));
            text.add(words.instruction(first.get()));
            words.mayFollow(first.get()).ifPresent(text::add);
            sections.add(new Section(words.text("handout.first"), text));
            sections.add(new Section(words.text("handout.why"), List.of(words.why(first.get().finding().kind()))));
            sections.add(new Section(words.text("handout.check"), List.of(words.check(first.get().finding().kind()))));
        } else {
            sections.add(new Section(words.nothing(assessment.advice()), List.of()));
        }
        sections.add(new Section(words.text("handout.good"), List.of(named(assessment, words, Verdict.IN_RANGE)
                .map(list -> words.text("handout.good.lead", list)).orElse(words.text("handout.none.good")))));
        sections.add(new Section(words.text("handout.untold"), untold(assessment, words)));
        sections.add(new Section(words.text("handout.measured"), List.of(words.text("handout.measured.text"),
                words.text("handout.terms"))));
        sections.add(new Section(words.text("handout.cautions"), List.of(words.text("handout.cautions.text"))));
        return new Page(title, coachsWords, List.copyOf(sections));
    }

    /** What is too close to call in one paragraph; what cannot be told by what would help most. */
    private static List<String> untold(Assessment assessment, Words words) {
        List<String> text = new ArrayList<>();
        named(assessment, words, Verdict.TOO_CLOSE).ifPresent(l -> text.add(words.text("handout.untold.too-close", l)));
        Map<Source, List<String>> unseen = new LinkedHashMap<>();
        assessment.advice().findings().stream().filter(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)))
                .forEach(f -> unseen.computeIfAbsent(f.reading().dominatedBy(), s -> new ArrayList<>())
                        .add(words.name(f.kind())));
        unseen.forEach((source, names) -> text.add(
                words.text("handout.untold.cannot-tell", words.list(names), words.help(source))));
        return text.isEmpty() ? List.of(words.text("handout.none.untold")) : List.copyOf(text);
    }

    private static Optional<String> named(Assessment assessment, Words words, Verdict verdict) {
        List<String> names = assessment.advice().findings().stream()
                .filter(f -> f.verdict().equals(Optional.of(verdict))).map(f -> words.name(f.kind())).toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(words.list(names));
    }
}

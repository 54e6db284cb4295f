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

/**
 * What the player's page says, section by section; PDF and HTML lay out the same.
 *
 * @param coach  the coach's own words, on top; empty when there are none
 * @param beside what stands beside the still: the one thing, why, and how to check it; without one, what was good and what
 *               could not be told
 * @param below  the rest
 */
record Page(String title, Optional<Section> coach, List<Section> beside, List<Section> below) {

    Page {
        beside = List.copyOf(beside);
        below = List.copyOf(below);
    }

    /**
     * A heading and its paragraphs.
     *
     * @param part what it is, the same in every language; plain ASCII
     */
    record Section(String part, String heading, List<String> paragraphs) {

        Section {
            heading = Plain.line(heading);
            paragraphs = paragraphs.stream()
                    .map(Plain::line)
                    .filter(p -> !p.isEmpty())
                    .toList();
        }
    }

    static Page of(Assessment assessment, Words words, String title, String coachsWords) {
        List<Section> beside = new ArrayList<>();
        Optional<Section> coach = Plain.line(coachsWords).isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        "coach",
                        words.text("handout.coach"),
                        Plain.text(coachsWords).lines().toList()));
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            first(first.get(), words, beside);
        } else {
            beside.add(new Section(
                    "first",
                    words.nothing(assessment.advice()),
                    List.of(words.text(assessment.advice().allInRange() ? "handout.keep" : "handout.keep.unsure"))));
        }
        List<Section> below = new ArrayList<>();
        List<Section> told = first.isPresent() ? below : beside;
        told.add(new Section(
                "good",
                words.text("handout.good"),
                List.of(named(assessment, words, Verdict.IN_RANGE)
                        .map(list -> words.text("handout.good.lead", list))
                        .orElse(words.text("handout.none.good")))));
        told.add(new Section("untold", words.text("handout.untold"), untold(assessment, words)));
        below.add(section("measured", words));
        below.add(section("terms", words));
        below.add(section("cautions", words));
        return new Page(Plain.line(title), coach, beside, below);
    }

    private static void first(FirstThing first, Words words, List<Section> sections) {
        List<String> why = new ArrayList<>(List.of(words.why(first.finding().kind())));
        words.mayFollow(first).ifPresent(why::add);
        sections.add(new Section(
                "first",
                words.text("handout.first"),
                List.of(words.sentence(first.finding()), words.instruction(first))));
        sections.add(new Section("why", words.text("handout.why"), why));
        sections.add(new Section(
                "check",
                words.text("handout.check"),
                List.of(words.check(first.finding().kind()))));
    }

    private static Section section(String part, Words words) {
        return new Section(part, words.text("handout." + part + ".heading"), List.of(words.text("handout." + part)));
    }

    /** What is too close to call in one paragraph; what cannot be told by the reason. */
    private static List<String> untold(Assessment assessment, Words words) {
        List<String> text = new ArrayList<>();
        named(assessment, words, Verdict.TOO_CLOSE).ifPresent(l -> text.add(words.text("handout.untold.too-close", l)));
        Map<Source, List<String>> unseen = new LinkedHashMap<>();
        assessment.advice().findings().stream()
                .filter(f -> f.verdict().equals(Optional.of(Verdict.CANNOT_TELL)))
                .forEach(f -> unseen.computeIfAbsent(f.reading().dominatedBy(), s -> new ArrayList<>())
                        .add(words.name(f.kind())));
        unseen.forEach((source, names) ->
                text.add(words.text("handout.untold.cannot-tell", words.list(names), words.unsure(source))));
        return text.isEmpty() ? List.of(words.text("handout.none.untold")) : List.copyOf(text);
    }

    private static Optional<String> named(Assessment assessment, Words words, Verdict verdict) {
        List<String> names = assessment.advice().findings().stream()
                .filter(f -> f.verdict().equals(Optional.of(verdict)))
                .map(f -> words.name(f.kind()))
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(words.list(names));
    }
}

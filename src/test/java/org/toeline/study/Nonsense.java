package org.toeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Ways to spoil a sheet so that its marks cannot all be right, written apart from the program's own ways of mending. The
 * rods are those of the scenes and of the sample lessons: rod-near and rod-far along the target line, cross-ball and
 * cross-feet across it.
 */
enum Nonsense {
    ROD_TURNED("rod-turned") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return each(sheet, v -> named(v, ROD_TURNED_ROUND));
        }
    },
    ROD_TURNED_IN_ONE_VIEW("rod-turned") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return one(sheet, random, v -> named(v, ROD_TURNED_ROUND));
        }
    },
    CROSS_ROD_TURNED("cross-rod-turned") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return each(sheet, v -> named(v, CROSS_ROD_TURNED_ROUND));
        }
    },
    CROSS_ROD_TURNED_IN_ONE_VIEW("cross-rod-turned") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return one(sheet, random, v -> named(v, CROSS_ROD_TURNED_ROUND));
        }
    },
    RODS_EXCHANGED("rods-exchanged") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return each(
                    sheet,
                    v -> named(
                            v,
                            Map.of(
                                    "rod-near", "cross-ball",
                                    "rod-far", "cross-feet",
                                    "cross-ball", "rod-near",
                                    "cross-feet", "rod-far")));
        }
    },
    TARGET_REVERSED("target-reversed") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            List<FloorReference> turned = new ArrayList<>();
            sheet.floor().points().forEach(p -> turned.add(new FloorReference(p.id(), -p.t(), p.h())));
            return sheet.withFloor(new FloorLayout(
                    turned, sheet.floor().sigmaM(), sheet.floor().laying()));
        }
    },
    OTHER_HAND("other-hand") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return sheet.withHandedness(sheet.handedness() == Handedness.LEFT ? Handedness.RIGHT : Handedness.LEFT);
        }
    },
    VIEWS_EXCHANGED("views-exchanged") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            Optional<ViewMarks> faceOn = sheet.view(View.FACE_ON);
            Optional<ViewMarks> down = sheet.view(View.DOWN_THE_LINE);
            MarkSheet out = faceOn.isPresent() && down.isPresent()
                    ? sheet
                    : sheet.withoutView(View.FACE_ON).withoutView(View.DOWN_THE_LINE);
            if (faceOn.isPresent()) {
                out = out.withView(called(faceOn.get(), View.DOWN_THE_LINE));
            }
            if (down.isPresent()) {
                out = out.withView(called(down.get(), View.FACE_ON));
            }
            return out;
        }
    },
    MIRRORED("mirrored") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return one(sheet, random, Nonsense::mirror);
        }
    },
    RANDOM_MARKS("") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return each(sheet, v -> {
                ViewMarks out = v;
                for (Mark m : v.marks()) {
                    out = out.withMark(
                            m.movedTo(new ImagePoint(random.nextDouble(v.widthPx()), random.nextDouble(v.heightPx()))));
                }
                return out;
            });
        }
    },
    DUPLICATED_MARKS("") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            return each(sheet, v -> {
                ViewMarks out = v;
                for (Mark m : v.marks()) {
                    Mark from = v.marks().get(random.nextInt(v.marks().size()));
                    out = out.withMark(new Mark(m.landmark(), from.at(), m.sigmaPx(), m.origin()));
                }
                return out;
            });
        }
    },
    SAME_CLIP_TWICE("") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            View from = random.nextBoolean() ? View.FACE_ON : View.DOWN_THE_LINE;
            View to = from == View.FACE_ON ? View.DOWN_THE_LINE : View.FACE_ON;
            return sheet.withView(called(sheet.view(from).orElseThrow(), to));
        }
    },
    ANOTHER_CLIP("") {
        @Override
        MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random) {
            View view = random.nextBoolean() ? View.FACE_ON : View.DOWN_THE_LINE;
            return sheet.withView(other.view(view).orElseThrow());
        }
    };

    private static final Map<String, String> ROD_TURNED_ROUND = Map.of("rod-near", "rod-far", "rod-far", "rod-near");
    private static final Map<String, String> CROSS_ROD_TURNED_ROUND =
            Map.of("cross-ball", "cross-feet", "cross-feet", "cross-ball");

    /** The slip's name in documents; empty where it is none of the usual ones. */
    final String likely;

    Nonsense(String likely) {
        this.likely = likely;
    }

    /** @param other the sheet of another scene */
    abstract MarkSheet of(MarkSheet sheet, MarkSheet other, SplittableRandom random);

    /** Whether scenes of a kind have what is spoilt, and more than that to contradict it. */
    boolean isPossible(SceneKind kind) {
        boolean both = kind.faceOn && kind.downTheLine;
        return switch (this) {
            case ROD_TURNED_IN_ONE_VIEW, CROSS_ROD_TURNED_IN_ONE_VIEW -> both && kind.rods;
            case SAME_CLIP_TWICE, ANOTHER_CLIP -> both;
            default -> ordinal() > TARGET_REVERSED.ordinal() || kind.rods;
        };
    }

    private interface Spoil {
        ViewMarks of(ViewMarks view);
    }

    private static MarkSheet each(MarkSheet sheet, Spoil spoil) {
        MarkSheet out = sheet;
        for (ViewMarks v : sheet.views()) {
            if (v.view() != View.TEE) {
                out = out.withView(spoil.of(v));
            }
        }
        return out;
    }

    private static MarkSheet one(MarkSheet sheet, SplittableRandom random, Spoil spoil) {
        List<ViewMarks> views =
                sheet.views().stream().filter(v -> v.view() != View.TEE).toList();
        return sheet.withView(spoil.of(views.get(random.nextInt(views.size()))));
    }

    private static ViewMarks called(ViewMarks v, View view) {
        return new ViewMarks(
                view, v.widthPx(), v.heightPx(), v.lens(), v.floorMarks(), v.verticals(), v.ball(), v.marks());
    }

    private static ViewMarks named(ViewMarks v, Map<String, String> names) {
        List<FloorMark> marks = new ArrayList<>();
        for (FloorMark m : v.floorMarks()) {
            marks.add(new FloorMark(names.getOrDefault(m.pointId(), m.pointId()), m.at(), m.sigmaPx()));
        }
        return new ViewMarks(v.view(), v.widthPx(), v.heightPx(), v.lens(), marks, v.verticals(), v.ball(), v.marks());
    }

    private static ViewMarks mirror(ViewMarks v) {
        double w = v.widthPx();
        List<FloorMark> floor = new ArrayList<>();
        v.floorMarks().forEach(m -> floor.add(new FloorMark(m.pointId(), m.at().mirrored(w), m.sigmaPx())));
        List<VerticalMark> verticals = new ArrayList<>();
        v.verticals()
                .forEach(m -> verticals.add(new VerticalMark(m.from().mirrored(w), m.to().mirrored(w), m.sigmaPx())));
        List<Mark> marks = new ArrayList<>();
        for (Landmark l : Landmark.values()) {
            v.mark(l).ifPresent(m -> marks.add(Mark.placed(l, m.at().mirrored(w), m.sigmaPx())));
        }
        Optional<BallMark> ball = v.ball()
                .map(b -> new BallMark(b.centre().mirrored(w), b.diameterPx(), b.sigmaPx(), b.diameterSigmaPx()));
        return new ViewMarks(v.view(), v.widthPx(), v.heightPx(), v.lens(), floor, verticals, ball, marks);
    }
}

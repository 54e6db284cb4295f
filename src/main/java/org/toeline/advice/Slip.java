package org.toeline.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.LensNote;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** The usual slips of whoever marks a lesson. Each can be undone by pure functions of the sheet, {@link #mends}. */
public enum Slip {
    /** What lies along the target line was marked from its other end. */
    ROD_TURNED("rod-turned") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            return renamed(sheet, FloorLines.of(sheet.floor()).alongTurned());
        }
    },
    /** What lies across it was marked from its other end. */
    CROSS_ROD_TURNED("cross-rod-turned") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            return renamed(sheet, FloorLines.of(sheet.floor()).acrossTurned());
        }
    },
    /** One rod was taken for the other. */
    RODS_EXCHANGED("rods-exchanged") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            return FloorLines.of(sheet.floor()).exchanged().stream()
                    .flatMap(names -> renamed(sheet, names).stream())
                    .toList();
        }
    },
    /** The floor was measured towards the wrong side. */
    TARGET_REVERSED("target-reversed") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            if (sheet.views().stream().allMatch(v -> v.floorMarks().isEmpty())) {
                return List.of();
            }
            FloorLayout floor = sheet.floor();
            List<FloorReference> points = floor.points().stream()
                    .map(p -> new FloorReference(p.id(), -p.t(), p.h()))
                    .toList();
            return List.of(new Mend(
                    this, Optional.empty(), sheet.withFloor(new FloorLayout(points, floor.sigmaM(), floor.laying()))));
        }
    },
    /** The player swings the other way. */
    OTHER_HAND("other-hand") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            Handedness other = sheet.handedness() == Handedness.LEFT ? Handedness.RIGHT : Handedness.LEFT;
            return List.of(new Mend(this, Optional.empty(), sheet.withHandedness(other)));
        }
    },
    /** The clip called face-on is the one down the line, and the other way round. */
    VIEWS_EXCHANGED("views-exchanged") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            MarkSheet exchanged = sheet;
            for (ViewMarks v : sheet.views()) {
                Optional<View> other = exchangedWith(v.view());
                if (other.isPresent()) {
                    exchanged = sheet.view(other.get()).isPresent() ? exchanged : exchanged.withoutView(v.view());
                    exchanged = exchanged.withView(new ViewMarks(
                            other.get(),
                            v.widthPx(),
                            v.heightPx(),
                            v.lens(),
                            v.floorMarks(),
                            v.verticals(),
                            v.ball(),
                            v.marks()));
                }
            }
            return List.of(new Mend(this, Optional.empty(), exchanged));
        }
    },
    /** One clip shows the mirror image, as some cameras that face their user do. */
    MIRRORED("mirrored") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            return sheet.views().stream()
                    .filter(v -> v.view() != View.TEE)
                    .map(v -> new Mend(this, Optional.of(v.view()), sheet.withView(mirrored(v))))
                    .toList();
        }
    },
    /** Something else. */
    UNKNOWN("unknown") {
        @Override
        List<Mend> mends(MarkSheet sheet) {
            return List.of();
        }
    };

    private final String id;

    Slip(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    /** Whether undoing it calls marks on the floor by other names and leaves all else as it is. */
    boolean isOfNames() {
        return this == ROD_TURNED || this == CROSS_ROD_TURNED || this == RODS_EXCHANGED;
    }

    public static Optional<Slip> of(String id) {
        return Arrays.stream(values()).filter(s -> s.id.equals(id)).findFirst();
    }

    /** The sheet with the slip undone, in each of the ways it can have been made; none where it cannot have been made. */
    abstract List<Mend> mends(MarkSheet sheet);

    /** What a view is called where face-on and down the line were exchanged. */
    static Optional<View> exchangedWith(View view) {
        return switch (view) {
            case FACE_ON -> Optional.of(View.DOWN_THE_LINE);
            case DOWN_THE_LINE -> Optional.of(View.FACE_ON);
            case TEE -> Optional.empty();
        };
    }

    /** Floor marks by other names: in every view that has them, and in each alone. */
    List<Mend> renamed(MarkSheet sheet, Map<String, String> names) {
        List<ViewMarks> with = sheet.views().stream()
                .filter(v -> v.floorMarks().stream().anyMatch(m -> names.containsKey(m.pointId())))
                .toList();
        if (with.isEmpty()) {
            return List.of();
        }
        List<Mend> ways = new ArrayList<>();
        MarkSheet all = sheet;
        for (ViewMarks v : with) {
            all = all.withView(renamed(v, names));
        }
        ways.add(new Mend(this, Optional.empty(), all));
        if (with.size() > 1) {
            with.forEach(v -> ways.add(new Mend(this, Optional.of(v.view()), sheet.withView(renamed(v, names)))));
        }
        return ways;
    }

    private static ViewMarks renamed(ViewMarks v, Map<String, String> names) {
        List<FloorMark> marks = v.floorMarks().stream()
                .map(m -> new FloorMark(names.getOrDefault(m.pointId(), m.pointId()), m.at(), m.sigmaPx(), m.origin()))
                .toList();
        return new ViewMarks(v.view(), v.widthPx(), v.heightPx(), v.lens(), marks, v.verticals(), v.ball(), v.marks());
    }

    static ViewMarks mirrored(ViewMarks v) {
        int width = v.widthPx();
        LensNote lens = v.lens();
        OptionalDouble cx =
                lens.cxPx().isPresent() ? OptionalDouble.of(width - lens.cxPx().getAsDouble()) : OptionalDouble.empty();
        return new ViewMarks(
                v.view(),
                width,
                v.heightPx(),
                new LensNote(lens.focalPx(), lens.focalSigmaPx(), cx, lens.cyPx(), lens.k1(), lens.k2()),
                v.floorMarks().stream()
                        .map(m -> new FloorMark(m.pointId(), m.at().mirrored(width), m.sigmaPx(), m.origin()))
                        .toList(),
                v.verticals().stream()
                        .map(m -> new VerticalMark(
                                m.from().mirrored(width), m.to().mirrored(width), m.sigmaPx(), m.origin()))
                        .toList(),
                v.ball()
                        .map(b -> new BallMark(
                                b.centre().mirrored(width),
                                b.diameterPx(),
                                b.sigmaPx(),
                                b.diameterSigmaPx(),
                                b.origin())),
                v.marks().stream()
                        .map(m -> new Mark(m.landmark(), m.at().mirrored(width), m.sigmaPx(), m.origin()))
                        .toList());
    }
}

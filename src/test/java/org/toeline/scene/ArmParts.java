package org.toeline.scene;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;

/** The bare arm below the sleeve with an edge at the wrist, and the hand that closes round the grip. */
final class ArmParts {

    private static final int BAND = 0x2B2E33;

    private final Skeleton rest;
    private final Build build;
    private final Outfit outfit;
    private final double k;

    ArmParts(Skeleton rest, Build build, Outfit outfit) {
        this.rest = rest;
        this.build = build;
        this.outfit = outfit;
        this.k = build.scale();
    }

    List<Part> parts() {
        List<Part> all = new ArrayList<>();
        for (boolean lead : new boolean[] {true, false}) {
            all.add(arm(lead));
            all.add(hand(lead));
        }
        return all;
    }

    private Part arm(boolean lead) {
        Vec socket = lead ? rest.leadSocket : rest.trailSocket;
        Vec elbow = rest.at(lead ? LEAD_ELBOW : TRAIL_ELBOW);
        Vec wrist = rest.at(lead ? LEAD_WRIST : TRAIL_WRIST);
        Bone upper = lead ? Bone.LEAD_UPPER_ARM : Bone.TRAIL_UPPER_ARM;
        Bone fore = lead ? Bone.LEAD_FOREARM : Bone.TRAIL_FOREARM;
        Frame f = rest.frame(fore);
        double long_ = build.forearmM();
        List<Shape> s = List.of(
                Shape.cone(upper, socket.towards(elbow, 0.35), 0.045 * k * build.girth(), elbow, 0.039 * k),
                Shape.cone(fore, elbow, 0.039 * k, f.out(0.28 * long_, 0, 0.004), 0.042 * k * build.girth()),
                Shape.cone(fore, f.out(0.28 * long_, 0, 0.004), 0.042 * k * build.girth(), wrist, 0.0275 * k));
        return new Part("arm", s, 0.025, 0.007, (x, y, z, fine, swatch) -> {
            swatch.colour(outfit.skin());
            Vec l = f.in(new Vec(x, y, z));
            if (l.x() > -0.03 && l.x() < 0.03) {
                swatch.times(1 - 0.14 * Swatch.line(l.x(), 0.003, fine));
            }
            if (!lead) {
                swatch.over(BAND, Swatch.line(l.x() - long_ + 0.012, 0.010, fine));
            } else {
                swatch.over(Outfit.GLOVE, Swatch.inside(long_ - 0.004 - l.x(), fine));
            }
        });
    }

    /** The back of the hand from the wrist to the knuckles, four fingers round the grip, the thumb down it. */
    private Part hand(boolean lead) {
        Bone bone = lead ? Bone.LEAD_HAND : Bone.TRAIL_HAND;
        Frame h = rest.frame(bone);
        Vec wrist = rest.at(lead ? LEAD_WRIST : TRAIL_WRIST);
        Frame fore = rest.frame(lead ? Bone.LEAD_FOREARM : Bone.TRAIL_FOREARM);
        // the back of the lead hand faces the target, that of the trail hand away from it
        Vec back = Vec.TARGET.times(lead ? 1 : -1).squareTo(h.x());
        Vec in = h.z();
        List<Shape> s = new ArrayList<>();
        s.add(Shape.cone(bone, wrist, 0.027 * k, place(h, back, in, 0.0, 0.012, 0.022), 0.031 * k));
        s.add(Shape.cone(
                bone,
                place(h, back, in, -0.026, 0.020, 0.008),
                0.0175 * k,
                place(h, back, in, 0.030, 0.018, 0.002),
                0.0165 * k));
        for (int i = 0; i < 4; i++) {
            double along = -0.030 + 0.0205 * i;
            Vec a = place(h, back, in, along, 0.021, -0.004);
            Vec b = place(h, back, in, along + 0.002, 0.008, -0.022);
            Vec c = place(h, back, in, along + 0.003, -0.016, -0.016);
            s.add(Shape.rod(bone, a, b, 0.0098 * k));
            s.add(Shape.rod(bone, b, c, 0.0092 * k));
        }
        s.add(Shape.cone(
                bone,
                place(h, back, in, -0.01, -0.006, 0.022),
                0.0135 * k,
                place(h, back, in, 0.048, -0.006, 0.016),
                0.0095 * k));
        int colour = lead ? Outfit.GLOVE : outfit.skin();
        return new Part(lead ? "glove" : "hand", s, 0.010, 0.0035, (x, y, z, fine, swatch) -> {
            swatch.colour(colour);
            if (lead) {
                double cuff = fore.in(new Vec(x, y, z)).x() - build.forearmM();
                swatch.times(1 - 0.35 * Swatch.line(cuff - 0.002, 0.0015, fine));
            }
        });
    }

    private static Vec place(Frame h, Vec back, Vec in, double along, double toBack, double toArm) {
        return h.origin().plus(h.x().times(along)).plus(back.times(toBack)).plus(in.times(toArm));
    }
}

package org.toeline.scene;

import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.WorldPoint;

/** Player, club and ball of a scenario as lit surfaces, and the pose for any moment. Immutable once made. */
final class Stage {

    private final Poser poser;
    private final Skeleton rest;
    private final List<Mesh> meshes = new ArrayList<>();

    Stage(Scenario scenario) {
        poser = scenario.poser();
        rest = poser.at(Deviation.NONE);
        List<Part> parts = new ArrayList<>();
        parts.addAll(new TorsoParts(rest, scenario.build(), scenario.outfit()).parts());
        parts.addAll(new LegParts(rest, scenario.build(), scenario.outfit()).parts());
        parts.addAll(new ArmParts(rest, scenario.build(), scenario.outfit()).parts());
        parts.addAll(new HeadParts(rest, scenario.build(), scenario.outfit()).parts());
        parts.addAll(new ClubParts(rest, scenario.club()).parts());
        Shading shading = new Shading(parts);
        for (Part part : parts) {
            Mesh mesh = new Mesher(part).mesh();
            shading.light(mesh);
            meshes.add(mesh);
        }
    }

    List<Mesh> meshes() {
        return meshes;
    }

    /** For each bone the 3 × 4 matrix that takes a place at address to its place at a deviation. */
    double[][] moves(Deviation deviation) {
        Skeleton posed = poser.at(deviation);
        double[][] all = new double[Bone.values().length][];
        for (Bone bone : Bone.values()) {
            Frame from = rest.frame(bone);
            Frame to = posed.frame(bone);
            Vec x = column(from, to, Vec.TARGET);
            Vec y = column(from, to, Vec.PLAYER);
            Vec z = column(from, to, Vec.UP);
            Vec o = from.carried(Vec.ZERO, to);
            all[bone.ordinal()] =
                    new double[] {x.x(), y.x(), z.x(), o.x(), x.y(), y.y(), z.y(), o.y(), x.z(), y.z(), z.z(), o.z()};
        }
        return all;
    }

    private static Vec column(Frame from, Frame to, Vec axis) {
        return from.carried(axis, to).minus(from.carried(Vec.ZERO, to));
    }

    /** The top line of the soled head where it is nearest the ball. */
    static WorldPoint crown(Skeleton rest, ClubModel club) {
        ClubParts parts = new ClubParts(rest, club);
        Part head = parts.parts().stream()
                .filter(p -> p.name().equals("head"))
                .findFirst()
                .orElseThrow();
        return parts.crown(head).world();
    }
}

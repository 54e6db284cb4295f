package org.toeline.advice;

/** What floor points are called. */
public record FloorWords(Words words) {

    private static final String JOINT = "joint-";

    /** By what one sees; a point of a layout of the coach's own is called what they call it. */
    public String name(String pointId) {
        String key = "floor-point." + pointId;
        if (words.has(key)) {
            return words.text(key);
        }
        return pointId.startsWith(JOINT) ? words.text("floor-point.joint", pointId.substring(JOINT.length())) : pointId;
    }
}

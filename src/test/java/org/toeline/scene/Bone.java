package org.toeline.scene;

/** The rigid pieces that the player and the club are hung on. */
enum Bone {
    PELVIS,
    TRUNK,
    HEAD,
    LEAD_UPPER_ARM,
    LEAD_FOREARM,
    LEAD_HAND,
    TRAIL_UPPER_ARM,
    TRAIL_FOREARM,
    TRAIL_HAND,
    LEAD_THIGH,
    LEAD_SHANK,
    LEAD_FOOT,
    TRAIL_THIGH,
    TRAIL_SHANK,
    TRAIL_FOOT,
    CLUB,
    GROUND
}

package org.toeline.install;

/**
 * A system and processor that packages are made for.
 *
 * @param id     as the libraries of clips and pictures name it: {@code linux-x86_64}
 * @param sqlite the folder of the database's library in its jar
 */
record NativePlatform(String id, String sqlite) {

    static NativePlatform of(String id) {
        return switch (id) {
            case "linux-x86_64" -> new NativePlatform(id, "Linux/x86_64");
            case "linux-arm64" -> new NativePlatform(id, "Linux/aarch64");
            case "macosx-arm64" -> new NativePlatform(id, "Mac/aarch64");
            case "macosx-x86_64" -> new NativePlatform(id, "Mac/x86_64");
            case "windows-x86_64" -> new NativePlatform(id, "Windows/x86_64");
            default -> throw new IllegalArgumentException("no package is made for " + id);
        };
    }

    boolean linux() {
        return id.startsWith("linux");
    }

    boolean windows() {
        return id.startsWith("windows");
    }

    /** As Debian names the processor. */
    String debian() {
        return id.endsWith("arm64") ? "arm64" : "amd64";
    }
}

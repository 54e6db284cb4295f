package org.toeline.language;

import java.util.Optional;

/** Which version of the program this is: what the build wrote into its archive. */
public final class Version {

    private static final Sentences SENTENCES = Sentences.of(Version.class);

    private Version() {}

    /** Such as “0.1.0”; that it is not packaged where it runs from its classes. */
    public static String words() {
        return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElseGet(() -> SENTENCES.of("version.none"));
    }
}

package org.toeline.ledger.store.place;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.toeline.language.Sentences;

/**
 * What a file holds, whatever it is called: its size and the SHA-256 of all of its bytes.
 *
 * @param sizeBytes 0 or more
 * @param sha256    64 hexadecimal digits in small letters
 */
public record Fingerprint(long sizeBytes, String sha256) {

    private static final int BLOCK = 1 << 16;

    public Fingerprint {
        if (sizeBytes < 0 || !sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    Sentences.of(Fingerprint.class).of("fingerprint.needed", sizeBytes, sha256));
        }
    }

    /** Reads all of it; a large clip takes some seconds. */
    public static Fingerprint of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in);
        }
    }

    /** Of all that is left to read. */
    public static Fingerprint of(InputStream in) throws IOException {
        MessageDigest digest = sha256Digest();
        long size = 0;
        byte[] block = new byte[BLOCK];
        for (int n = in.read(block); n >= 0; n = in.read(block)) {
            digest.update(block, 0, n);
            size += n;
        }
        return new Fingerprint(size, HexFormat.of().formatHex(digest.digest()));
    }

    public static MessageDigest sha256Digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

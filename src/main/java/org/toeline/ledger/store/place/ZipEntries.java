package org.toeline.ledger.store.place;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.io.input.ChecksumInputStream;

/** Entries of a zip archive, read against the check sum its directory states (CRC-32), which {@link ZipFile} leaves unread. */
public final class ZipEntries {

    private ZipEntries() {}

    /** The unpacked bytes; at their end an {@link IOException} when they are not what was put in. */
    public static InputStream open(ZipFile zip, ZipEntry entry) throws IOException {
        return ChecksumInputStream.builder()
                .setInputStream(zip.getInputStream(entry))
                .setChecksum(new CRC32())
                .setExpectedChecksumValue(entry.getCrc())
                .get();
    }
}

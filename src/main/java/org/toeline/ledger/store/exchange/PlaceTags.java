package org.toeline.ledger.store.exchange;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where a clip was filmed, as cameras write it into MP4 and QuickTime files: the boxes {@code ©xyz} and {@code loci} of a {@code udta}
 * (3GPP TS 26.244, section 8), and the items of a {@code meta} whose key speaks of a location (Apple, QuickTime File Format,
 * metadata keys). What is given out has noughts in their place; nothing moves, so every frame stays where it was.
 */
final class PlaceTags {

    private static final int HEAD = 8;
    private static final int DEEPEST = 6;
    private static final long MOST_META_BYTES = 1 << 20;
    private static final String PLACE = "\u00a9xyz";
    private static final Set<String> HOLDING = Set.of("moov", "udta", "trak", "mdia", "meta");

    /** Bytes from here on that are written as noughts. */
    private record Blank(long from, long length) {}

    private record Box(long at, String type, long bodyAt, long end) {}

    private final SeekableByteChannel channel;
    private final List<Blank> blanks = new ArrayList<>();

    private PlaceTags(SeekableByteChannel channel) {
        this.channel = channel;
    }

    /** The clip without its place tags; any other kind of file as it is. */
    static InputStream without(Path clip) throws IOException {
        List<Blank> blanks;
        try (SeekableByteChannel channel = Files.newByteChannel(clip)) {
            PlaceTags tags = new PlaceTags(channel);
            tags.look(0, channel.size(), 0);
            blanks = tags.blanks;
        }
        return blanked(new BufferedInputStream(Files.newInputStream(clip)), blanks);
    }

    private static InputStream blanked(InputStream in, List<Blank> blanks) {
        return new FilterInputStream(in) {
            private long at;

            @Override
            public int read() throws IOException {
                byte[] one = new byte[1];
                return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
            }

            @Override
            public int read(byte[] into, int from, int most) throws IOException {
                int n = super.read(into, from, most);
                for (Blank blank : blanks) {
                    long first = Math.max(at, blank.from);
                    long end = Math.min(at + n, blank.from + blank.length);
                    for (long i = first; i < end; i++) {
                        into[from + (int) (i - at)] = 0;
                    }
                }
                at += Math.max(0, n);
                return n;
            }
        };
    }

    private List<Box> boxes(long from, long end) throws IOException {
        List<Box> boxes = new ArrayList<>();
        long at = from;
        while (at + HEAD <= end) {
            ByteBuffer head = bytes(at, (int) Math.min(2 * HEAD, end - at));
            long size = Integer.toUnsignedLong(head.getInt(0));
            String type = new String(head.array(), 4, 4, StandardCharsets.ISO_8859_1);
            long body = at + HEAD;
            if (size == 1 && head.limit() == 2 * HEAD) {
                size = head.getLong(HEAD);
                body += HEAD;
            } else if (size == 0) {
                size = end - at;
            }
            if (size < body - at || size > end - at) {
                break;
            }
            boxes.add(new Box(at, type, body, at + size));
            at += size;
        }
        return boxes;
    }

    private ByteBuffer bytes(long at, int length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        channel.position(at);
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            // until all of it is there
        }
        return bytes.flip();
    }

    private void look(long from, long end, int depth) throws IOException {
        for (Box box : boxes(from, end)) {
            if (box.type.equals(PLACE) || box.type.equals("loci")) {
                blanks.add(new Blank(box.bodyAt, box.end - box.bodyAt));
                // a box that nobody knows what to read in
                blanks.add(new Blank(box.at + 4, 4));
            } else if (depth < DEEPEST && HOLDING.contains(box.type)) {
                long inside = box.bodyAt + (box.type.equals("meta") ? versioned(box) : 0);
                if (box.type.equals("meta")) {
                    keyed(boxes(inside, box.end));
                }
                look(inside, box.end, depth + 1);
            }
        }
    }

    /** In an MP4 file a {@code meta} begins with a version of four bytes, in a QuickTime file with its first box. */
    private int versioned(Box meta) throws IOException {
        return meta.end - meta.bodyAt >= 4 && bytes(meta.bodyAt, 4).getInt(0) == 0 ? 4 : 0;
    }

    private void keyed(List<Box> meta) throws IOException {
        List<Integer> places = new ArrayList<>();
        for (Box keys : meta) {
            if (keys.type.equals("keys") && keys.end - keys.bodyAt <= MOST_META_BYTES) {
                int number = 0;
                for (Box key : boxes(keys.bodyAt + HEAD, keys.end)) {
                    number++;
                    String name = new String(
                            bytes(key.bodyAt, (int) (key.end - key.bodyAt)).array(), StandardCharsets.ISO_8859_1);
                    if (name.contains("location")) {
                        places.add(number);
                    }
                }
            }
        }
        for (Box list : meta) {
            if (list.type.equals("ilst")) {
                for (Box item : boxes(list.bodyAt, list.end)) {
                    int number = ByteBuffer.wrap(item.type.getBytes(StandardCharsets.ISO_8859_1))
                            .getInt();
                    if (places.contains(number) || item.type.equals(PLACE)) {
                        blanks.add(new Blank(item.bodyAt + 2 * HEAD, Math.max(0, item.end - item.bodyAt - 2 * HEAD)));
                    }
                }
            }
        }
    }
}

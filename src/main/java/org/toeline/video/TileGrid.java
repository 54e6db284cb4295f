package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.AV_STREAM_GROUP_PARAMS_TILE_GRID;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.util.BitSet;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avformat.AVStreamGroup;
import org.bytedeco.ffmpeg.avformat.AVStreamGroupTileGrid;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;
import org.toeline.language.Sentences;

/**
 * A photograph stored in tiles, each a stream of one picture, as phones write HEIC (ISO/IEC 23008-12, 6.6.2.3): put
 * together on a canvas, of which a part is shown.
 */
final class TileGrid {

    private final String name;
    private final AVStreamGroup group;
    private final AVStreamGroupTileGrid grid;

    private TileGrid(String name, AVStreamGroup group) {
        this.name = name;
        this.group = group;
        this.grid = group.params_tile_grid();
    }

    /** The largest of a file; empty where nothing is stored in tiles. */
    static Optional<TileGrid> of(String name, AVFormatContext format) {
        Optional<TileGrid> largest = Optional.empty();
        for (int i = 0; i < format.nb_stream_groups(); i++) {
            AVStreamGroup group = format.stream_groups(i);
            if (group.type() == AV_STREAM_GROUP_PARAMS_TILE_GRID && group.nb_streams() > 0) {
                TileGrid tiles = new TileGrid(name, group);
                if (largest.isEmpty() || tiles.width() > largest.get().width()) {
                    largest = Optional.of(tiles);
                }
            }
        }
        return largest;
    }

    int width() {
        return grid.width();
    }

    int height() {
        return grid.height();
    }

    /** Of the canvas, which may be larger than what is shown. */
    long pixels() {
        return (long) grid.coded_width() * grid.coded_height();
    }

    Orientation orientation() {
        return Orientation.of(grid.coded_side_data(), grid.nb_coded_side_data());
    }

    /** The stream that tells the coding. */
    AVStream first() {
        return group.streams(0);
    }

    /** Reads the file's packets and puts the picture together; the caller frees it. */
    AVFrame picture(AVFormatContext format) throws ClipException {
        AVFrame canvas = av_frame_alloc();
        AVPacket packet = av_packet_alloc();
        BitSet placed = new BitSet();
        boolean whole = false;
        try {
            while (av_read_frame(format, packet) >= 0) {
                place(packet, canvas, placed);
                av_packet_unref(packet);
            }
            if (placed.cardinality() < grid.nb_tiles()) {
                throw new ClipException(Sentences.of(TileGrid.class)
                        .of("photograph.tiles", name, grid.nb_tiles(), placed.cardinality()));
            }
            crop(canvas);
            canvas.pts(0).best_effort_timestamp(0);
            whole = true;
            return canvas;
        } finally {
            av_packet_free(packet);
            if (!whole) {
                av_frame_free(canvas);
            }
        }
    }

    /** Decodes a packet's picture and puts it wherever the grid names its stream. */
    private void place(AVPacket packet, AVFrame canvas, BitSet placed) throws ClipException {
        AVFrame tile = null;
        for (int i = 0; i < grid.nb_tiles(); i++) {
            int of = grid.offsets_idx(i);
            boolean ours =
                    of >= 0 && of < group.nb_streams() && group.streams(of).index() == packet.stream_index();
            if (ours && tile == null) {
                tile = decoded(group.streams(of), packet);
            }
            if (ours && tile != null && tile.width() > 0 && fits(tile, canvas)) {
                copy(tile, canvas, grid.offsets_horizontal(i), grid.offsets_vertical(i));
                placed.set(i);
            }
        }
        if (tile != null) {
            av_frame_free(tile);
        }
    }

    private static AVFrame decoded(AVStream stream, AVPacket packet) {
        AVCodecContext codec =
                avcodec_alloc_context3(avcodec_find_decoder(stream.codecpar().codec_id()));
        AVFrame tile = av_frame_alloc();
        avcodec_parameters_to_context(codec, stream.codecpar());
        codec.max_pixels(OpenedStream.MOST_PIXELS);
        codec.thread_count(1);
        if (avcodec_open2(codec, null, (AVDictionary) null) >= 0) {
            avcodec_send_packet(codec, packet);
            avcodec_send_packet(codec, (AVPacket) null);
            // a tile that cannot be decoded stays empty
            avcodec_receive_frame(codec, tile);
        }
        avcodec_free_context(codec);
        return tile;
    }

    /** The canvas is made for the first tile; others have to be coded like it. */
    private boolean fits(AVFrame tile, AVFrame canvas) throws ClipException {
        if (canvas.width() == 0) {
            av_frame_copy_props(canvas, tile);
            canvas.width(grid.coded_width()).height(grid.coded_height()).format(tile.format());
            if (av_frame_get_buffer(canvas, 0) < 0) {
                throw new ClipException(
                        Sentences.of(TileGrid.class).of("clip.memory", name, grid.coded_width(), grid.coded_height()));
            }
        }
        return canvas.format() == tile.format();
    }

    private static void copy(AVFrame tile, AVFrame canvas, int x, int y) {
        int width = Math.min(tile.width(), canvas.width() - x);
        int height = Math.min(tile.height(), canvas.height() - y);
        if (x < 0 || y < 0 || width <= 0 || height <= 0) {
            return;
        }
        AVPixFmtDescriptor format = av_pix_fmt_desc_get(canvas.format());
        for (int plane = 0; plane < av_pix_fmt_count_planes(canvas.format()); plane++) {
            int shift = plane == 1 || plane == 2 ? format.log2_chroma_h() : 0;
            long at = (long) (y >> shift) * canvas.linesize(plane) + av_image_get_linesize(canvas.format(), x, plane);
            av_image_copy_plane(
                    new BytePointer(canvas.data(plane)).getPointer(at),
                    canvas.linesize(plane),
                    tile.data(plane),
                    tile.linesize(plane),
                    av_image_get_linesize(canvas.format(), width, plane),
                    (height + (1 << shift) - 1) >> shift);
        }
    }

    private void crop(AVFrame canvas) {
        canvas.crop_left(grid.horizontal_offset()).crop_top(grid.vertical_offset());
        canvas.crop_right(grid.coded_width() - grid.horizontal_offset() - grid.width());
        canvas.crop_bottom(grid.coded_height() - grid.vertical_offset() - grid.height());
        av_frame_apply_cropping(canvas, AV_FRAME_CROP_UNALIGNED);
    }
}

package org.toeline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.PointerPointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/** The clips that ship decode, are small, and the truth beside them is that of today's scenarios. */
class SampleMediaTest {

    private static final Path FOLDER = Path.of("sample-media");
    private static final long CLIP_BYTES = 3_000_000;
    private static final long ALL_BYTES = 20_000_000;
    private static final long TRUTH_BYTES = 200_000;
    /** Pixels are written with two decimals. */
    private static final double WRITTEN_PX = 0.006;

    static List<Path> clips() {
        List<Path> all = new ArrayList<>();
        for (Scenario s : Scenarios.all()) {
            for (View view : View.values()) {
                all.add(FOLDER.resolve(s.id()).resolve(view.id() + ".mp4"));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("clips")
    void theClipDecodesAtItsSize(Path clip) throws Exception {
        assertThat(Files.size(clip)).isBetween(50_000L, CLIP_BYTES);
        int[] found = decode(clip);
        assertThat(found[0]).isEqualTo(Scenario.WIDTH);
        assertThat(found[1]).isEqualTo(Scenario.HEIGHT);
        boolean tee = clip.endsWith("tee.mp4");
        assertThat(found[2]).isEqualTo(tee ? Motion.TEE_FRAMES : Motion.FRAMES);
    }

    /** Width, height as decoded of the first frame, and how many packets there are. */
    private static int[] decode(Path clip) {
        AVFormatContext format = new AVFormatContext(null);
        assertThat(avformat_open_input(format, clip.toString(), null, (AVDictionary) null))
                .isZero();
        assertThat(avformat_find_stream_info(format, (PointerPointer<?>) null)).isNotNegative();
        AVCodecContext codec = avcodec_alloc_context3(avcodec_find_decoder(AV_CODEC_ID_H264));
        avcodec_parameters_to_context(codec, format.streams(0).codecpar());
        assertThat(codec.colorspace()).isEqualTo(AVCOL_SPC_BT709);
        assertThat(codec.color_range()).isEqualTo(AVCOL_RANGE_MPEG);
        assertThat(avcodec_open2(codec, avcodec_find_decoder(AV_CODEC_ID_H264), (AVDictionary) null))
                .isZero();
        AVPacket packet = av_packet_alloc();
        AVFrame frame = av_frame_alloc();
        int[] found = new int[3];
        while (av_read_frame(format, packet) >= 0) {
            found[2]++;
            if (found[0] == 0) {
                avcodec_send_packet(codec, packet);
                if (avcodec_receive_frame(codec, frame) >= 0) {
                    found[0] = frame.width();
                    found[1] = frame.height();
                }
            }
            av_packet_unref(packet);
        }
        av_frame_free(frame);
        av_packet_free(packet);
        avcodec_free_context(codec);
        avformat_close_input(format);
        return found;
    }

    @Test
    void allClipsTogetherAreSmall() throws Exception {
        long sum = 0;
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path p : files.filter(Files::isRegularFile).toList()) {
                sum += Files.size(p);
            }
        }
        assertThat(sum).isLessThan(ALL_BYTES);
    }

    @ParameterizedTest
    @MethodSource("clips")
    void theTruthBesideAClipIsTodaysAndAgreesWithItself(Path clip) throws Exception {
        Path file = clip.resolveSibling(clip.getFileName().toString().replace(".mp4", ".truth.json"));
        assertThat(Files.size(file)).isLessThan(TRUTH_BYTES);
        JsonNode truth = new ObjectMapper().readTree(file.toFile());
        assertThat(truth.get("format").asText()).isEqualTo("toeline-truth");
        Scenario scenario = Scenarios.named(truth.get("lesson").asText()).orElseThrow();
        View view = View.of(truth.get("view").asText()).orElseThrow();
        Truth today = Truth.of(scenario);
        today.landmarks().forEach((landmark, p) -> {
            JsonNode list = truth.get("landmarks").get(landmark.id());
            WorldPoint written = new WorldPoint(
                    list.get(0).asDouble(), list.get(1).asDouble(), list.get(2).asDouble());
            assertThat(written.distance(p)).as(landmark.id()).isLessThan(2e-5);
            if (list.size() > 3) {
                assertPixel(list.get(3).asDouble(), list.get(4).asDouble(), Truth.pixel(scenario, view, p));
            }
        });
        today.readings()
                .forEach((id, v) -> assertThat(
                                truth.get("readings").get(id).get("value").asDouble())
                        .as(id)
                        .isCloseTo(v.value(), within(1e-4)));
        for (JsonNode f : truth.get("floor")) {
            FloorReference point = scenario.floor().point(f.get("id").asText()).orElseThrow();
            if (f.has("x")) {
                assertPixel(
                        f.get("x").asDouble(),
                        f.get("y").asDouble(),
                        Truth.pixel(scenario, view, new WorldPoint(point.t(), point.h(), 0)));
            }
        }
        assertThat(truth.get("camera").get("focal").asDouble())
                .isEqualTo(scenario.camera(view).lens().focalPx());
    }

    private static void assertPixel(double x, double y, ImagePoint wanted) {
        assertThat(new ImagePoint(x, y).distancePx(wanted)).isLessThan(2 * WRITTEN_PX);
    }

    /** Both views of a lesson show the same body at the same time. */
    @Test
    void theViewsOfALessonShowTheSameBody() throws Exception {
        ObjectMapper mapper = new ObjectMapper();
        for (Scenario s : Scenarios.all()) {
            JsonNode a = mapper.readTree(
                    FOLDER.resolve(s.id()).resolve("face-on.truth.json").toFile());
            JsonNode b = mapper.readTree(
                    FOLDER.resolve(s.id()).resolve("down-the-line.truth.json").toFile());
            for (int i = 0; i < a.get("moments").size(); i++) {
                JsonNode one = a.get("moments").get(i).get("landmarks").get(Landmark.LEAD_SHOULDER.id());
                JsonNode two = b.get("moments").get(i).get("landmarks").get(Landmark.LEAD_SHOULDER.id());
                for (int k = 0; k < 3; k++) {
                    assertThat(one.get(k).asDouble()).isEqualTo(two.get(k).asDouble());
                }
            }
        }
    }
}

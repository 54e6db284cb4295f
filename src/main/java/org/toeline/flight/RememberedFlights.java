package org.toeline.flight;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Flights through one air, each launch flown once while it is remembered: while one shot of many is typed, only that one is
 * flown anew. Any threads may ask at the same time.
 */
public final class RememberedFlights {

    private static final int MOST = 250_000;
    private static final int MOST_BANDS = 20_000;
    private static final int MOST_WINDOWS = 100;

    private final Air air;
    private final FlightBand band;
    private final Map<Launch, Flight> firsts = new ConcurrentHashMap<>();
    private final Map<Launch, FlightBand.Figures> all = new ConcurrentHashMap<>();
    private final Map<Launch, Flight> curves = new ConcurrentHashMap<>();
    private final Map<Long, LaunchWindow> windows = new ConcurrentHashMap<>();

    public RememberedFlights(Air air) {
        this.air = air;
        this.band = new FlightBand(air);
    }

    public Air air() {
        return air;
    }

    /** The launch by each model. */
    public FlightBand.Figures of(Launch launch) {
        return remembered(all, launch, band::of, MOST_BANDS);
    }

    /** The launch by the model whose figures stand first, without its curve. */
    public Flight first(Launch launch) {
        return remembered(firsts, launch, band::first, MOST);
    }

    /** The same with its curve. */
    public Flight curve(Launch launch) {
        return remembered(curves, launch, band::firstCurve, MOST_BANDS);
    }

    /** The launch by each model, with the curves. */
    public List<Flight> curves(Launch launch) {
        return band.curves(launch);
    }

    /** From where a ball of about this speed, to half a metre a second, would carry farthest. */
    public LaunchWindow window(double speedMps) {
        if (windows.size() > MOST_WINDOWS) {
            windows.clear();
        }
        return windows.computeIfAbsent(Math.max(1, Math.round(2 * speedMps)), v -> LaunchWindow.of(v / 2.0, air));
    }

    private static <T> T remembered(Map<Launch, T> flown, Launch launch, Function<Launch, T> fly, int most) {
        if (flown.size() > most) {
            flown.clear();
        }
        return flown.computeIfAbsent(launch, fly);
    }
}

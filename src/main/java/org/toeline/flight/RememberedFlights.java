package org.toeline.flight;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Flights through one air, each launch flown once while it is remembered: while one shot of many is typed, only that one is
 * flown anew. Any thread may ask; a thread waits while another flies.
 */
public final class RememberedFlights {

    private static final int MOST = 2000;

    private final Air air;
    private final FlightBand band;
    private final Map<Launch, FlightBand.Figures> flown = new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Launch, FlightBand.Figures> eldest) {
            return size() > MOST;
        }
    };

    public RememberedFlights(Air air) {
        this.air = air;
        this.band = new FlightBand(air);
    }

    public Air air() {
        return air;
    }

    /** The launch by each model. */
    public synchronized FlightBand.Figures of(Launch launch) {
        return flown.computeIfAbsent(launch, band::of);
    }

    /** The launch by the model whose figures stand first. */
    public Flight first(Launch launch) {
        return of(launch).first();
    }
}

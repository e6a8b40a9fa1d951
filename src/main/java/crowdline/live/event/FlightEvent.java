package crowdline.live.event;

import crowdline.measure.Must;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What moves the act: figures begin, are left out, are held. An index counts the figures of the variant from 0. */
public sealed interface FlightEvent extends LiveEvent {

    /**
     * The act that comes next is chosen.
     *
     * @param atS when it was chosen, seconds on the session's scale
     * @param actId id of the act
     * @param variant name of the variant of it that is flown
     * @param figureIds ids of its figures in the order flown, so that the journal needs no show file to be read again
     * @param transitIds those of them that are only the way to the next figure; none in journals from before they were told
     * @param slotStartS when its slot begins on the session's scale, negative if it was before the session, where nobody
     *     knows it by the clocks of the venue, as in journals from before; null if {@code slot} says it, or nobody knows
     * @param slot when its slot begins by the clocks of the venue, or null if that is not known
     */
    record ActChosen(
            double atS,
            String actId,
            String variant,
            List<String> figureIds,
            List<String> transitIds,
            @Nullable Double slotStartS,
            SlotTime.@Nullable OnClock slot)
            implements FlightEvent {
        /** Of figures only, with a slot on the session's scale, or none. */
        public ActChosen(
                double atS, String actId, String variant, List<String> figureIds, @Nullable Double slotStartS) {
            this(atS, actId, variant, figureIds, List.of(), slotStartS);
        }

        /** With a slot on the session's scale, or none. */
        public ActChosen(
                double atS,
                String actId,
                String variant,
                List<String> figureIds,
                List<String> transitIds,
                @Nullable Double slotStartS) {
            this(atS, actId, variant, figureIds, transitIds, slotStartS, null);
        }

        public ActChosen {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
            Must.beSaid("variant name", variant);
            Must.beFiniteIfKnown("slotStartS", slotStartS);
            figureIds = List.copyOf(figureIds);
            transitIds = List.copyOf(transitIds);
        }

        @Nullable
        public SlotTime slotTime() {
            return slot != null ? slot : slotStartS != null ? new SlotTime.InSession(slotStartS) : null;
        }
    }

    /** The act is flown in another variant, before it starts or in the middle. */
    record VariantChosen(double atS, String variant, List<String> figureIds, List<String> transitIds)
            implements FlightEvent {
        /** Of figures only. */
        public VariantChosen(double atS, String variant, List<String> figureIds) {
            this(atS, variant, figureIds, List.of());
        }

        public VariantChosen {
            Must.beTime("atS", atS);
            Must.beSaid("variant name", variant);
            figureIds = List.copyOf(figureIds);
            transitIds = List.copyOf(transitIds);
        }
    }

    /** Something else moves the live position from now on. */
    record SourceChosen(double atS, Source source) implements FlightEvent {
        public SourceChosen {
            Must.beTime("atS", atS);
        }
    }

    /** The first figure of the act that is not dropped begins. */
    record ActStarted(double atS) implements FlightEvent {
        public ActStarted {
            Must.beTime("atS", atS);
        }
    }

    /**
     * The next figure that is not dropped begins, by hand. After the last figure the act is over. Less than
     * {@link crowdline.live.state.Live#SAME_BOUNDARY_S} after the clock or the aircraft marked a boundary it means that same boundary, and sets its
     * time right.
     */
    record Stepped(double atS) implements FlightEvent {
        public Stepped {
            Must.beTime("atS", atS);
        }
    }

    /**
     * The last boundary was not one: back to what was before it, with the start it had.
     *
     * @param remarkIds the remarks of the figure that has not begun after all: they are still to be said, its call too
     */
    record SteppedBack(double atS, List<String> remarkIds) implements FlightEvent {
        public SteppedBack {
            Must.beTime("atS", atS);
            remarkIds = List.copyOf(remarkIds);
        }

        /** With no words to withdraw. */
        public SteppedBack(double atS) {
            this(atS, List.of());
        }
    }

    /** The clock of the figure stands still. */
    record Held(double atS) implements FlightEvent {
        public Held {
            Must.beTime("atS", atS);
        }
    }

    /** The clock of the figure goes on. */
    record Released(double atS) implements FlightEvent {
        public Released {
            Must.beTime("atS", atS);
        }
    }

    /** The next figure will not be flown, nor the way that leads to it. */
    record NextDropped(double atS) implements FlightEvent {
        public NextDropped {
            Must.beTime("atS", atS);
        }
    }

    /** The figure dropped last will be flown after all, and the way that leads to it. */
    record DropUndone(double atS) implements FlightEvent {
        public DropUndone {
            Must.beTime("atS", atS);
        }
    }

    /** The next two figures that are not dropped are flown in each other's place, each with the way that leads to it. */
    record NextSwapped(double atS) implements FlightEvent {
        public NextSwapped {
            Must.beTime("atS", atS);
        }
    }

    /** The aircraft does something that is not in the plan. */
    record WentOffPlan(double atS) implements FlightEvent {
        public WentOffPlan {
            Must.beTime("atS", atS);
        }
    }

    /** The act is over. */
    record ActEnded(double atS) implements FlightEvent {
        public ActEnded {
            Must.beTime("atS", atS);
        }
    }

    /** The aircraft is back in the plan and begins this figure. */
    record CameBack(double atS, int index) implements FlightEvent {
        public CameBack {
            Must.beTime("atS", atS);
            Must.beIndex("index", index);
        }
    }

    /** The time of the figure is up and the next one begins, by the clock. */
    record ClockAdvanced(double atS, int index) implements FlightEvent {
        public ClockAdvanced {
            Must.beTime("atS", atS);
            Must.beIndex("index", index);
        }
    }

    /**
     * The aircraft can no longer be followed; the clock stands in until {@link AircraftFound}.
     *
     * @param seenS when it was last seen to fly what the screen says, 0 if it never was. A figure over its time by then
     *     lasts nobody knows how long, and the clock waits for the hand
     */
    record AircraftLost(double atS, double seenS) implements FlightEvent {
        public AircraftLost {
            Must.beTime("atS", atS);
            Must.beTime("seenS", seenS);
        }
    }

    /** The aircraft can be followed again, and moves the position. */
    record AircraftFound(double atS) implements FlightEvent {
        public AircraftFound {
            Must.beTime("atS", atS);
        }
    }

    /**
     * The aircraft was seen to begin the first figure of the act that is not dropped; told again once it is known better
     * when that was.
     *
     * @param atS when that was known
     * @param sinceS when it most likely began, not after {@code atS}
     */
    record AircraftBegan(double atS, double sinceS) implements FlightEvent {
        public AircraftBegan {
            Must.beTime("atS", atS);
            Must.beTime("sinceS", sinceS);
            if (sinceS > atS) {
                throw new IllegalArgumentException("sinceS is " + sinceS + "; it must not be after atS, " + atS);
            }
        }
    }

    /** The aircraft was seen to begin this figure. */
    record AircraftSeen(double atS, int index) implements FlightEvent {
        public AircraftSeen {
            Must.beTime("atS", atS);
            Must.beIndex("index", index);
        }
    }

    /** The aircraft was seen to do something that is not in the plan, or perhaps a figure before the one shown. */
    record AircraftStrayed(double atS) implements FlightEvent {
        public AircraftStrayed {
            Must.beTime("atS", atS);
        }
    }
}

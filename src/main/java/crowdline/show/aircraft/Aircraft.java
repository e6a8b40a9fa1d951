package crowdline.show.aircraft;

/** What flies an act: an airframe whose figures are computed, or something that is only timed. */
public sealed interface Aircraft permits Airframe, TimedAircraft {
    /** Stable name used by acts. */
    String id();

    /** How it is called to the crowd. */
    String name();
}

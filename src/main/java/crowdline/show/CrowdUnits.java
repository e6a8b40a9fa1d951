package crowdline.show;

/** What a crowd measures its days in: it is told speeds, heights and distances so. */
public enum CrowdUnits {
    /** Miles an hour, feet, miles. */
    MILES,
    /** Kilometres an hour, metres, kilometres. */
    METRIC
}

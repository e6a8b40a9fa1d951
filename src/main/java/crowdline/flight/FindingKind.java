package crowdline.flight;

import crowdline.show.check.Severity;

/** What can be noticed about a predicted figure: how bad it is, and its stable short name. */
enum FindingKind {
    CANNOT_BE_FLOWN(Severity.ERROR, "cannot-be-flown"),
    SLOW_TO_BEGIN(Severity.WARNING, "slow-to-begin"),
    OVER_NEVER_EXCEED(Severity.ERROR, "over-never-exceed"),
    WOULD_STALL(Severity.WARNING, "would-stall"),
    TOO_SLOW_TO_HOLD(Severity.WARNING, "too-slow-to-hold"),
    OVER_LOAD_LIMIT(Severity.ERROR, "over-load-limit"),
    BELOW_GROUND(Severity.ERROR, "below-ground"),
    BELOW_BASE(Severity.ERROR, "below-base"),
    ABOVE_CEILING(Severity.WARNING, "above-ceiling"),
    IN_CLOUD(Severity.WARNING, "in-cloud"),
    LEAVES_DISPLAY_AREA(Severity.WARNING, "leaves-display-area"),
    CROSSES_DISPLAY_LINE(Severity.WARNING, "crosses-display-line"),
    MISSES_ITS_PLACE(Severity.WARNING, "misses-its-place");

    private final Severity severity;
    private final String code;

    FindingKind(Severity severity, String code) {
        this.severity = severity;
        this.code = code;
    }

    FlightFinding about(String figureId, String message) {
        return new FlightFinding(severity, code, figureId, message);
    }
}

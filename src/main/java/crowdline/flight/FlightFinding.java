package crowdline.flight;

import crowdline.show.check.Severity;

/**
 * Something the prediction noticed about a figure. Never a statement that anything is all right.
 *
 * @param severity how bad
 * @param code stable short name, such as {@code runs-out-of-speed}
 * @param figureId the figure's id
 * @param message what, where, by how much, and what usually helps
 */
public record FlightFinding(Severity severity, String code, String figureId, String message) {}

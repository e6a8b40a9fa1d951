package crowdline.live.state;

import org.jspecify.annotations.Nullable;

/** From when to when the incident page was open; {@code closedAtS} is null while it is. */
public record IncidentSpan(double openedAtS, @Nullable Double closedAtS) {}

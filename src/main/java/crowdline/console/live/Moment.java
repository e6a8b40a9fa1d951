package crowdline.console.live;

import crowdline.live.LiveNow;
import crowdline.live.LiveState;
import crowdline.patter.Plan;
import java.time.LocalDateTime;

/**
 * Everything the Live screen is made from at one moment.
 *
 * @param state the running show
 * @param now what is read off it at this moment
 * @param plan what to say when, in the session's seconds
 * @param clock date and hour at the venue
 * @param tracking what readings say
 */
public record Moment(LiveState state, LiveNow now, Plan plan, LocalDateTime clock, Tracking tracking) {}

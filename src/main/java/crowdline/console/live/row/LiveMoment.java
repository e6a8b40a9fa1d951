package crowdline.console.live.row;

import crowdline.live.now.LiveNow;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.steer.Tracking;
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
public record LiveMoment(LiveState state, LiveNow now, Plan plan, LocalDateTime clock, Tracking tracking) {}

package crowdline.list.draft;

import crowdline.list.line.Side;

/** Which way the nose goes round, beside a figure or in a column of its own: "yaw right", "I always pivot left". */
final class Yawing {
    private static final Saying SAYING = Saying.of(
            "left|right",
            "(?:yaw|yawing|pivot|pivoting|kick|kicking|rotate|rotating) (?:to |toward )?(?:the )?(left|right)",
            (draft, found) -> {
                draft.say(Detail.SIDE, found.group(1).equals("left") ? Side.LEFT : Side.RIGHT);
                return true;
            });

    private Yawing() {}

    static Saying saying() {
        return SAYING;
    }
}

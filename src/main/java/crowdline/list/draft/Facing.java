package crowdline.list.draft;

/** Which side of the aircraft the crowd sees: "top towards crowd" says nothing of where it flies. */
final class Facing {
    private Facing() {}

    /** Keeps it as a note. */
    static Saying saying() {
        return Saying.of(
                " toward | to ",
                "(?:with )?(?:the )?(?:top|belly|canopy|wheel|underside|plan form|planform)(?: side)?(?: facing)? (?:toward|to) "
                        + Sayings.CROWD,
                (draft, found) -> {
                    draft.note(found.group());
                    return true;
                });
    }
}

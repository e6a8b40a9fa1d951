package crowdline.list.word;

/** Ranks that stand ahead of a name: of a service, or of a flight deck. */
public final class Uniform {
    private static final String RETIRED = "(?:,? ?\\(?(?:retired|retd|ret['’]d|rtd|ret)\\.?\\)?)?";

    /** A rank, with whether its bearer is retired; a pattern without groups. */
    public static final String RANK =
            "(?i:(?:wing commander|squadron leader|flight lieutenant|group captain|air commodore"
                    + "|flying officer|f/?o|petty officer|staff sergeant|(?:first|second|third) lieutenant|ensign|corporal|cpl|adjutant|general|pilot officer|warrant officer|chief pilot|first officer"
                    + "|lieutenant(?: commander| colonel)?|commander|colonel|major|sergeant|captain"
                    + "|(?:flt|fl)\\.? ?(?:lt|ldr)|sqn\\.? ?ldr|(?:wg|wing)\\.? ?cdr|(?:gp|grp)\\.? ?capt|air cdre|fg\\.? ?off|plt\\.? ?off"
                    + "|lt\\.? ?(?:cdr|col|cmdr)|capt|lt|cdr|cmdr|col|sgt|maj)\\b\\.?" + RETIRED + ")";

    /** Behind a name, or behind nothing. */
    public static final String BEHIND = "(?i:" + RETIRED + ")";

    private Uniform() {}
}

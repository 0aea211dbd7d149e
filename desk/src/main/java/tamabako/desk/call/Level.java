package tamabako.desk.call;

import java.util.List;

/// One step of a round in which calls grow longer from one to the next.
///
/// @param least the fewest digits of a row
/// @param most the most
/// @param seconds the time of a row
record Level(int least, int most, double seconds) {

    /// From beginners' 3 and 4 digits to the 15 and 16 of contest finals. The digits are those of
    /// the called events of the All-Japan championship and of English called sums
    /// (makisoro.sakura.ne.jp, to-z.net); the paces are common practice, no published source.
    static final List<Level> CLIMB =
            List.of(
                    new Level(3, 4, 3.5),
                    new Level(4, 5, 3.5),
                    new Level(5, 6, 3.5),
                    new Level(6, 7, 4),
                    new Level(7, 8, 4),
                    new Level(8, 9, 4.5),
                    new Level(9, 10, 4.5),
                    new Level(11, 12, 5),
                    new Level(13, 14, 5),
                    new Level(15, 16, 5));
}

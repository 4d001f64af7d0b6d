package beltmark.core.problem.setup;

import beltmark.core.problem.LengthRange;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;

/**
 * What is drawn for a situation, and what an answer can be at all.
 *
 * @param beltMark the left belt mark above the foot of the tape
 * @param outOfLevel how much higher or lower the right belt mark is
 * @param roof the underside of what lies above the belt mark
 * @param floor how far below the belt mark the floor lies
 * @param obstacleFrom how far from the belt mark an obstacle begins, upwards or downwards
 * @param obstacleSize how tall an obstacle is
 * @param mountedOff how far off its mount mark the tensioner was fixed, either way
 * @param splice how tall the tallest splice is
 * @param reading how far off an answer read off a tape or worked in sixteenths may be: half a sixteenth
 * @param tapeAnswers what a height above the foot of the tape can be
 * @param springAnswers what a spring length can be
 * @param sleeveAnswers what a length of sleeve can be
 */
public record SituationRanges(
        LengthRange beltMark,
        LengthRange outOfLevel,
        LengthRange roof,
        LengthRange floor,
        LengthRange obstacleFrom,
        LengthRange obstacleSize,
        LengthRange mountedOff,
        LengthRange splice,
        Length reading,
        LengthSpan tapeAnswers,
        LengthSpan springAnswers,
        LengthSpan sleeveAnswers) {}

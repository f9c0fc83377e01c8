# Convert.

convert-title = Convert
convert-also = units inch inches metric imperial millimetre millimeter fraction decimal tape ruler nominal thickness
convert-given = { $reading } on { $mark } marks
convert-picture = A rule with its marks; the reading in red between its two neighbours

convert-readings = Readings, one a line
convert-graduation = Marks of the tool in hand
convert-rounding = Between two marks
convert-line-refused = Line { $number }: { $problem }

convert-all = All readings
convert-to = To { $mark }
convert-decimal-inches = Decimal inches
convert-rounded = rounded
convert-feet-inches = Feet and inches
convert-sold-as = A sheet sold as
convert-sold-exact = exactly
convert-sold-under = and { $mm } mm under it
convert-sold-over = and { $mm } mm over it
convert-sold-also = { $cost }; also called { $also }

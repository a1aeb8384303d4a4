// The dew point: metal that is as cold, or colder, is wet or white with frost.
#pragma once

namespace hemline {

/// In degrees Fahrenheit, of the air's temperature and its relative humidity in percent, above 0
/// and at most 100: Magnus' formula with 17.625 and 243.04 °C, good from −40 to 50 °C.
double dew_point(double air_fahrenheit, double humidity_percent);

}  // namespace hemline

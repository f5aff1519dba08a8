// layer: base
// expect: conversion from .double. to non-scalar type
// A number has no unit until a named maker gives it one.
#include "units.h"

using namespace twinround;

#ifdef CONTROL
const Length foot = Length::from_mm(246.0);
#else
const Length foot = 246.0;
#endif

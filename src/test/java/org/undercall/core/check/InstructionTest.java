package org.undercall.core.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercall.core.procedure.Again;

@DisplayName("Words of a procedure")
class InstructionTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Stands carry the van.",
        "Stands carry the van. Never work under a jack alone.",
        "Support the car on stands.",
        "Set the car on rated axle stands before you go under it.",
        "Use jackstands.",
        "Use axle stands, never a jack alone.",
        "Never work under the car without stands.",
        "Do not go under the vehicle unless it rests on stands.",
        "The body is supported by stands on both sides.",
        "Lower the car onto its stands.",
        "Do not work under it without stands in use.",
        "Use stands instead of a jack."
      })
  @DisplayName("tell that stands carry the car")
  void standsCarry(String caution) {
    assertTrue(Instruction.standsCarry(caution));
    assertFalse(Instruction.standsNeedless(caution));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Do not remove the stands until the end.",
        "Remove the stands before you lower it.",
        "Do not use stands.",
        "Never put it on stands.",
        "No stands are needed.",
        "The stands are in the store.",
        "The car stands on a jack.",
        "Stands are optional.",
        "Use a jack instead of stands.",
        "Take the car off its stands.",
        "Mind your hands."
      })
  @DisplayName("do not tell it by naming them")
  void standsNamed(String caution) {
    assertFalse(Instruction.standsCarry(caution));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "No stands are needed for the front.",
        "Stands are not required here.",
        "Stands are optional."
      })
  @DisplayName("say that stands are not needed")
  void standsNeedless(String caution) {
    assertTrue(Instruction.standsNeedless(caution));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Check the torque of the wheel bolts again",
        "Re-torque the wheel bolts",
        "Retorque the lug nuts after 50 km",
        "Tighten the wheel nuts again",
        "Have the wheel studs checked for tightness"
      })
  @DisplayName("ask to check the wheels again")
  void checksWheels(String title) {
    assertTrue(Again.checksWheels(title));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Nothing about wheels or torque",
        "Check the wheel alignment",
        "The wheel bolts are tight",
        "Do not retorque the wheel bolts",
        "The wheel bolts need no torque check",
        "Check the torque of the arm bolts again",
        "Wash the wheels"
      })
  @DisplayName("do not ask it by naming them")
  void wheelsNamed(String title) {
    assertFalse(Again.checksWheels(title));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Undo the bush bolt", "Loosen, then take out, the nut"})
  @DisplayName("undo something")
  void undoes(String title) {
    assertTrue(Instruction.undoes(title));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Do not undo the pivot bolt", "Look whether the nut is loose"})
  @DisplayName("undo nothing by naming it")
  void undoesNot(String title) {
    assertFalse(Instruction.undoes(title));
  }
}

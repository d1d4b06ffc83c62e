import { Global, Module } from '@nestjs/common';
import { Workbench } from './workbench.js';

@Global()
@Module({ providers: [Workbench], exports: [Workbench] })
export class WorkbenchModule {}
